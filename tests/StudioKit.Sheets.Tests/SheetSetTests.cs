using System.Text;
using System.Xml.Linq;
using StudioKit.Kits.Cards;
using StudioKit.Planning;
using UglyToad.PdfPig;

namespace StudioKit.Sheets.Tests;

public sealed class SheetSetTests
{
    private static readonly SheetOptions Options = new() { Date = new DateOnly(2026, 5, 17) };

    private static readonly Lazy<IReadOnlyList<SheetFile>> Written = new(() => SheetSet.Write(SamplePlan.Plan, Options));

    [Fact]
    public void A_plan_gives_its_sheets_and_each_drawing_as_svg() =>
        Written.Value.Select(file => file.Name).Should().Equal(
            "mend-first.pdf", "field-pack.pdf", "plan-report.pdf", "build-sheet.pdf", "cards-A6.pdf", "cards-3x5in.pdf", "pack-list.pdf", "paper-log.pdf", "appendix.pdf",
            "pipe-cuts.svg", "sheet-cuts-1.svg", "panel.svg", "plot-power-white-background-small-flash-a.svg", "plot-power-habitat-behind-small-flash-b.svg",
            "pipe-cuts.csv", "sheet-cuts.csv", "shopping.csv", "pack-list.csv");

    [Fact]
    public void The_same_plan_gives_the_same_bytes()
    {
        var first = Written.Value;
        var second = SheetSet.Write(SamplePlan.Make("Fen edge kit"), Options);

        second.Should().HaveSameCount(first);
        second.Select(file => Convert.ToHexString(file.Content.Span)).Should().Equal(first.Select(file => Convert.ToHexString(file.Content.Span)));
    }

    [Fact]
    public void Every_page_names_kit_hash_and_date()
    {
        foreach (var file in Pdfs())
        {
            using var document = PdfDocument.Open(file.Content.ToArray());
            document.GetPages().Should().OnlyContain(page => Text(page).Contains("4f3a90c1") && Text(page).Contains("2026-05-17"), file.Name);
        }
    }

    [Fact]
    public void Drawings_are_well_formed_and_true_to_size()
    {
        var panel = Written.Value.Single(file => file.Name == "panel.svg");

        var root = XDocument.Parse(Encoding.UTF8.GetString(panel.Content.Span)).Root!;

        // The panel of 320 mm × 280 mm is the first path: its corners stand at their measures.
        root.Descendants().First(element => element.Name.LocalName == "path").Attribute("d")!.Value.Should().Be("M0 0L320 0L320 280L0 280Z");
    }

    [Fact]
    public void The_pack_list_has_every_item_once_with_its_mass()
    {
        using var document = PdfDocument.Open(Pdfs().Single(file => file.Name == "pack-list.pdf").Content.ToArray());
        var text = string.Join(' ', document.GetPages().Select(Text));

        foreach (var item in SamplePlan.Plan.Pack.Items)
        {
            text.Split(item.Name).Should().HaveCount(2, item.Name);
            text.Should().Contain(MeasureFormat.Mass(item.Mass));
        }
    }

    [Fact]
    public void The_build_sheet_gives_every_piece_its_length_and_says_how_it_was_planned()
    {
        using var document = PdfDocument.Open(Pdfs().Single(file => file.Name == "build-sheet.pdf").Content.ToArray());
        var text = string.Join(' ', document.GetPages().Select(Text));

        text.Should().ContainAll("402.5", "262", "181.5", "44").And.Contain("first-fit decreasing");
    }

    [Fact]
    public void Long_names_other_alphabets_and_forty_lenses_leave_nothing_out()
    {
        var plan = SamplePlan.Make("Торфяное болото у Ελώδης λίμνη, the very long name of a kit that somebody wrote on a rainy evening", lenses: 40);

        var files = SheetSet.Write(plan, Options);

        files.SelectMany(file => file.Problems).Should().BeEmpty();
        using var cards = PdfDocument.Open(files.Single(file => file.Name == "cards-A6.pdf").Content.ToArray());

        // Cards lie on their side, where the reader can't tell words; the order of printing keeps each line whole.
        var text = string.Join(' ', cards.GetPages().Select(page => page.Text));
        foreach (var exposure in plan.Exposures)
        {
            text.Should().Contain(exposure.Framing.Name);
        }

        text.Should().Contain("Торфяное").And.Contain("Ελώδης");
    }

    [Fact]
    public void An_empty_plan_still_prints()
    {
        var plan = SamplePlan.Plan with { Framings = [], Exposures = [], Frame = null, Checks = [], Defaults = [] };

        SheetSet.Write(plan, Options with { Cards = [CardTemplates.Of("A6")] }).Select(file => file.Name).Should().Equal("field-pack.pdf", "plan-report.pdf", "pack-list.pdf", "appendix.pdf", "pack-list.csv");
    }

    private static IEnumerable<SheetFile> Pdfs() =>
        Written.Value.Where(file => file.Name.EndsWith(".pdf", StringComparison.Ordinal));

    private static string Text(UglyToad.PdfPig.Content.Page page) => string.Join(' ', page.GetWords().Select(word => word.Text));
}
