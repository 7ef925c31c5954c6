using System.Collections.Concurrent;
using System.Globalization;
using StudioKit.Kits;
using StudioKit.Kits.Cards;
using StudioKit.Planning;
using StudioKit.Planning.Tests.Plans;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Pdf;

namespace StudioKit.Sheets.Tests.OnPaper;

/// <summary>Whatever a kit holds and however long its names are, no text lies over another or leaves its place, measured by the letters of the files.</summary>
public sealed class AnyKitOnPaperTests
{
    // Every kit has a number and is the same each time it is drawn; more of them: STUDIOKIT_RANDOM_KITS=100.
    private static readonly int More = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_KITS"), CultureInfo.InvariantCulture, out var kits) ? kits : 0;

    private static readonly ConcurrentDictionary<int, Lazy<IReadOnlyList<SheetFile>>> Made = new();

    private static readonly int[] Usual = [0, 1, 5, 10, 13, 24];

    public static TheoryData<int> Kits => [.. More > 0 ? Enumerable.Range(0, More) : Usual];

    [Theory]
    [MemberData(nameof(Kits))]
    public void No_text_lies_over_another_or_leaves_its_room(int number)
    {
        var options = OptionsOf(number);

        string.Join('\n', Sheets(number).SelectMany(file => PaperFaults.Of(file, options))).Should().BeEmpty();
    }

    [Theory]
    [MemberData(nameof(Kits))]
    public void No_page_is_under_a_quarter_full_unless_it_ends_a_document(int number) => string.Join('\n', Sheets(number).SelectMany(PrintedPage.NearlyEmpty)).Should().BeEmpty();

    /// <remarks>Of the 255 mm between the margins of A4, a square of 60 mm fills less than a quarter, one of 70 mm more.</remarks>
    [Theory]
    [InlineData(60, true)]
    [InlineData(70, false)]
    public void A_page_is_as_full_as_its_words_and_drawings_reach_down(double side, bool nearlyEmpty)
    {
        var laid = Pages.Lay(new DrawingBlock(new Drawing("a square", "one drawing", [Polygon.Rectangle(new Bounds(0, 0, side, side), Stroke.Edge)]), TrueScale: true, Caption: ""), new PageBreak(), new Paragraph("The last page may be as empty as it is."));

        PrintedPage.NearlyEmpty(new SheetFile("a.pdf", PdfWriter.Write(laid.Document), [])).Should().HaveCount(nearlyEmpty ? 1 : 0);
    }

    [Theory]
    [MemberData(nameof(DemoBooks.OnBothPapers), MemberType = typeof(DemoBooks))]
    public void No_page_of_a_demo_kits_book_is_under_a_quarter_full_unless_it_ends_a_chapter(string kit, Paper paper) => string.Join('\n', PrintedPage.NearlyEmpty(DemoBooks.Book(kit, paper))).Should().BeEmpty();

    /// <remarks>The whole book of each: what a user sees first.</remarks>
    [Theory]
    [MemberData(nameof(DemoBooks.Kits), MemberType = typeof(DemoBooks))]
    public void No_text_of_a_demo_kit_lies_over_another(string kit) => string.Join('\n', PaperFaults.OverEachOther(DemoBooks.Book(kit))).Should().BeEmpty();

    private static IReadOnlyList<SheetFile> Sheets(int number) =>
        Made.GetOrAdd(number, made => new(() => [.. SheetSet.Write(PlanOf(made), OptionsOf(made)).Where(file => file.Name.EndsWith(".pdf", StringComparison.Ordinal))])).Value;

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
