using System.Globalization;
using StudioKit.Kits;
using StudioKit.Kits.Cards;
using StudioKit.Planning;
using StudioKit.Planning.Tests.Plans;

namespace StudioKit.Sheets.Tests.OnPaper;

/// <summary>Whatever a kit holds and however long its names are, no text lies over another or leaves its place, measured by the letters of the files.</summary>
public sealed class AnyKitOnPaperTests
{
    // Every kit has a number and is the same each time it is drawn; more of them: STUDIOKIT_RANDOM_KITS=100.
    private static readonly int More = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_KITS"), CultureInfo.InvariantCulture, out var kits) ? kits : 0;

    private static readonly int[] Usual = [0, 1, 5, 10, 13, 24];

    public static TheoryData<int> Kits => [.. More > 0 ? Enumerable.Range(0, More) : Usual];

    [Theory]
    [MemberData(nameof(Kits))]
    public void No_text_lies_over_another_or_leaves_its_room(int number)
    {
        var options = OptionsOf(number);

        var files = SheetSet.Write(PlanOf(number), options);

        string.Join('\n', files.Where(file => file.Name.EndsWith(".pdf", StringComparison.Ordinal)).SelectMany(file => PaperFaults.Of(file, options))).Should().BeEmpty();
    }

    /// <remarks>The whole book of each: what a user sees first.</remarks>
    [Theory]
    [MemberData(nameof(DemoBooks.Kits), MemberType = typeof(DemoBooks))]
    public void No_text_of_a_demo_kit_lies_over_another(string kit) => string.Join('\n', PaperFaults.OverEachOther(DemoBooks.Book(kit))).Should().BeEmpty();

    private static Plan PlanOf(int number)
    {
        var kit = (number % 3) switch
        {
            0 => Drawn(RandomKits.Any, number),
            1 => Drawn(LikelyKits.Any, number),
            _ => DemoBooks.Kit((number / 3) % DemoBooks.Names.Count),
        };
        return KitPlanner.Plan(new KitReadResult(number % 5 == 0 ? kit : LongNames.Of(ManyLenses(kit, number), number % LongNames.Count), [], [], new()));
    }

    private static SheetOptions OptionsOf(int number) => new()
    {
        Paper = number % 2 == 0 ? Paper.A4 : Paper.Letter,
        Units = Enum.GetValues<TextUnits>()[number / 2 % Enum.GetValues<TextUnits>().Length],
        Cards = [.. new[] { "A6", CardTemplates.Names[number % CardTemplates.Names.Count] }.Distinct().Select(CardTemplates.Of)],
    };

    private static KitSpec ManyLenses(KitSpec kit, int number) => number % 4 == 0 && kit.Lenses.Count > 0
        ? kit with { Lenses = [.. Enumerable.Range(0, 5).Select(i => kit.Lenses[0] with { Name = i == 0 ? kit.Lenses[0].Name : $"{kit.Lenses[0].Name} {i}" })] }
        : kit;

    private static KitSpec Drawn(Gen<KitSpec> kits, int number) => kits.Generate(new PCG(15, (ulong)number), null, out _);
}
