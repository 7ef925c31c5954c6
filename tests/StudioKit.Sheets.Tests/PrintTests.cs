using System.Globalization;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Graphics.Colors;
using UglyToad.PdfPig.Tokens;

namespace StudioKit.Sheets.Tests;

/// <summary>What must hold of every sheet on paper, read back from the finished files by a reader that is not ours.</summary>
public sealed class PrintTests
{
    private static readonly SheetOptions Options = new() { Date = new DateOnly(2026, 5, 17) };

    private static readonly Lazy<byte[]> Book = new(() => SheetSet.WriteBook(SamplePlan.Plan, Options)[^1].Content.ToArray());

    /// <remarks>Black ink on bare paper is the highest contrast there is; a grey print loses nothing where there is no colour to lose.</remarks>
    [Fact]
    public void Letters_are_black_and_nothing_has_a_colour()
    {
        using var book = PdfDocument.Open(Book.Value);

        var letters = book.GetPages().SelectMany(page => page.Letters).Where(letter => letter.Value.Trim().Length > 0);

        // The words of a black tab at a card's edge, of 7 pt, are left white.
        letters.Where(letter => letter.Color.ToRGBValues() == (1.0, 1.0, 1.0)).Should().NotBeEmpty().And.OnlyContain(letter => Math.Abs(letter.PointSize - 7) < 0.01);
        letters.Select(letter => letter.Color.ToRGBValues()).Distinct().Should().BeEquivalentTo([(0.0, 0.0, 0.0), (1.0, 1.0, 1.0)]);
        var marks = book.GetPages().SelectMany(page => page.Paths).SelectMany(path => new[] { path.FillColor, path.StrokeColor }).OfType<IColor>();
        marks.Select(color => color.ToRGBValues()).Distinct().Should().NotBeEmpty().And.OnlyContain(color => color.r == color.g && color.g == color.b);
    }

    [Fact]
    public void The_smallest_type_is_six_and_a_half_points()
    {
        using var book = PdfDocument.Open(Book.Value);

        book.GetPages().SelectMany(page => page.Letters).Min(letter => letter.PointSize).Should().BeGreaterThanOrEqualTo(6.5 - 1e-6);
    }

    /// <remarks>The expected words are written out from the plan's values by plain arithmetic, not by the sheets' own formats.</remarks>
    [Fact]
    public void The_cards_text_gives_the_plans_values()
    {
        using var cards = PdfDocument.Open(SheetSet.Write(SamplePlan.Plan, Options).Single(file => file.Name == "cards-A6.pdf").Content.ToArray());
        var text = string.Join('\n', cards.GetPages().Select(page => page.Text));

        foreach (var exposure in SamplePlan.Plan.Exposures.Where(exposure => exposure.IsUsable))
        {
            text.Should().ContainAll(
                exposure.Framing.Name, exposure.SetUp, Invariant($"f/{exposure.Aperture.Value:0}"), Invariant($"{exposure.Iso.Value:0}"), "1/125", "All flashes off");
            foreach (var light in exposure.Lights)
            {
                text.Should().ContainAll(light.Flash, light.PowerMark, light.Mark.InFullStops, Invariant($"{light.Distance.Centimeters:0}"));
            }
        }
    }

    /// <remarks>ISO 32000-1, 14.8.2.1: a tagged file says so in MarkInfo and has a structure tree; 14.9.2: the language stands in the catalog.</remarks>
    [Fact]
    public void A_book_is_tagged_and_shows_its_title()
    {
        using var book = PdfDocument.Open(Book.Value);
        var catalog = book.Structure.Catalog.CatalogDictionary;

        catalog.Data.Should().ContainKeys("StructTreeRoot", "MarkInfo", "Lang", "ViewerPreferences");
        Resolve(book, catalog.Data["MarkInfo"]).Data["Marked"].Should().Be(BooleanToken.True);
        Resolve(book, catalog.Data["ViewerPreferences"]).Data["DisplayDocTitle"].Should().Be(BooleanToken.True);
        book.GetPages().Should().OnlyContain(page => page.Dictionary.Data.ContainsKey("StructParents"));
    }

    private static DictionaryToken Resolve(PdfDocument document, IToken token) =>
        (DictionaryToken)(token is IndirectReferenceToken reference ? document.Structure.GetObject(reference.Data).Data : token);

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
