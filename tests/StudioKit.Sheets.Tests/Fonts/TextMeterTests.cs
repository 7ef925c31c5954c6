using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Tests.Fonts;

public sealed class TextMeterTests
{
    /// <remarks>The PDF reader adds up the advance widths of the embedded font by itself; 0.05 mm is a tenth of a hair's breadth at arm's length.</remarks>
    [Theory]
    [InlineData("Hamburgefonstiv", 12)]
    [InlineData("f/16·1/125", 36)]
    [InlineData("Жаба", 12)]
    [InlineData("湿地の蛾と황무지", 12)]
    [InlineData("湿地の蛾と황무지", 6, TextWeight.Bold)]
    [InlineData("moth 蛾 é🦋 בור, end", 12)]
    public void Measured_width_is_the_width_that_a_pdf_reader_finds(string text, double size, TextWeight weight = TextWeight.Regular)
    {
        using var document = Pages.Read(Pages.Single(new Label(new Point(20, 50), text, size, Weight: weight)));
        var letters = document.GetPage(1).Letters;
        var found = (letters[^1].EndBaseLine.X - letters[0].StartBaseLine.X) / Pages.PointsPerMillimetre;

        TextMeter.Width(text, size, weight).Should().BeApproximately(found, 0.05);
    }

    [Fact]
    public void Letters_that_the_first_family_lacks_come_from_the_second_and_nothing_is_lost()
    {
        var runs = TextMeter.Runs("Frog Жаба ελιά é", TextWeight.Regular);

        string.Concat(runs.Select(run => run.Text)).Should().Be("Frog Жаба ελιά é");
        runs.Should().Contain(run => run.Face == FontFace.FallbackRegular && run.Text.Contains("Жаба", StringComparison.Ordinal));
        runs[0].Should().Be(new TextRun(FontFace.Regular, "Frog "));
        runs[^1].Face.Should().Be(FontFace.Regular);
    }

    [Fact]
    public void An_accent_stays_with_the_letter_that_carries_it()
    {
        // U+0301 alone is in the first family, the Cyrillic letter under it is not.
        var runs = TextMeter.Runs("а\u0301", TextWeight.Bold);

        runs.Should().Equal(new TextRun(FontFace.FallbackBold, "а\u0301"));
    }

    [Theory]
    [InlineData("蛾 ガ 나방", TextWeight.Regular)]
    [InlineData("蛾 ガ 나방", TextWeight.Bold)]
    public void Ideographs_kana_and_hangul_are_printed_and_read_back(string text, TextWeight weight)
    {
        using var document = Pages.Read(Pages.Single(new Label(new Point(20, 50), text, 12, Weight: weight)));

        string.Concat(document.GetPage(1).Letters.Select(letter => letter.Value)).Should().Be(text);
        PrintableText.Missing(text).Should().BeEmpty();
    }

    /// <remarks>Scripts from right to left and those that join or reorder their letters are not set letter by letter; emoji lie beyond the bundled fonts.</remarks>
    [Theory]
    [InlineData("moth בור", "ב", "ו", "ר")]
    [InlineData("عثة", "ع", "ث", "ة")]
    [InlineData("कीट", "की", "ट")]
    [InlineData("a🦋b", "🦋")]
    [InlineData("plain Żółw \u200Bλ", new string[0])]
    public void A_letter_that_cannot_be_printed_is_named_and_one_sign_stands_for_it(string text, params string[] missing)
    {
        PrintableText.Missing(text).Should().Equal(missing);

        string.Concat(TextMeter.Runs(text, TextWeight.Regular).Select(run => run.Text)).Split(TextMeter.Replacement).Should().HaveCount(missing.Length + 1);
    }

    [Fact]
    public void A_letter_is_named_by_its_numbers() => PrintableText.Name("की").Should().Be("की (U+0915 U+0940)");

    [Fact]
    public void Text_is_as_wide_as_its_parts() =>
        Gen.Select(Gen.String[Gen.Char['A', 'z'], 0, 20], Gen.String[Gen.Char['α', 'ω'], 0, 20]).Sample((latin, greek) =>
            Math.Abs(
                TextMeter.Width(latin + greek, 10, TextWeight.Regular)
                - TextMeter.Width(latin, 10, TextWeight.Regular)
                - TextMeter.Width(greek, 10, TextWeight.Regular)) < 1e-9);
}
