using StudioKit.Cli.Running;
using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Sheets;

namespace StudioKit.Cli.Tests.Running;

public sealed class SheetsAbreastTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    public void Sheets_are_the_same_however_many_are_made_at_a_time(int abreast)
    {
        // A plan for each, as one that has answered before answers at once.
        var files = SheetsAbreast.Write(SheetSet.Groups(Plan(), new SheetOptions()), abreast, file => file);
        var oneByOne = SheetSet.Write(Plan(), new SheetOptions());

        files.Select(file => file.Name).Should().Equal(oneByOne.Select(file => file.Name));
        files.Zip(oneByOne).Where(pair => !pair.First.Content.Span.SequenceEqual(pair.Second.Content.Span)).Select(pair => pair.First.Name).Should().BeEmpty();
    }

    /// <summary>What is done with a file is done before the next group is begun, so that no more than one group's files are held.</summary>
    [Fact]
    public void A_file_is_finished_as_soon_as_it_is_made()
    {
        List<string> told = [];
        var groups = new[] { "a", "b" }.Select(name => Group(name, () =>
        {
            told.Add($"make {name}");
            return [new SheetFile(name, default, [])];
        })).ToList();

        SheetsAbreast.Write(groups, 1, file =>
        {
            told.Add($"finish {file.Name}");
            return file;
        });

        told.Should().Equal("make a", "finish a", "make b", "finish b");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    public void A_fault_in_a_group_comes_out_as_it_is_however_many_are_made_at_a_time(int abreast)
    {
        var groups = Enumerable.Range(0, 20).Select(i => Group($"{i}", () => i == 7 ? throw new FormatException("no card") : [])).ToList();

        FluentActions.Invoking(() => SheetsAbreast.Write(groups, abreast, file => file)).Should().ThrowExactly<FormatException>().WithMessage("no card");
    }

    private static SheetGroup Group(string name, Func<IReadOnlyList<SheetFile>> write) => new(name, SheetGroupKind.Tables, write, () => []);

    private static Plan Plan() => KitPlanner.Plan(KitReader.Read(Repository.Kit("heath-ultralight.yaml")));
}
