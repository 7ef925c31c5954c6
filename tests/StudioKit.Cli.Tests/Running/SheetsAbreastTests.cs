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
        var files = SheetsAbreast.Write(SheetSet.Groups(Plan(), new SheetOptions()), abreast);
        var oneByOne = SheetSet.Write(Plan(), new SheetOptions());

        files.Select(file => file.Name).Should().Equal(oneByOne.Select(file => file.Name));
        files.Zip(oneByOne).Where(pair => !pair.First.Content.Span.SequenceEqual(pair.Second.Content.Span)).Select(pair => pair.First.Name).Should().BeEmpty();
    }

    private static Plan Plan() => KitPlanner.Plan(KitReader.Read(Repository.Kit("heath-ultralight.yaml")));
}
