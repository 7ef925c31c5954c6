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
    public void Measured_width_is_the_width_that_a_pdf_reader_finds(string text, double size)
    {
        using var document = Pages.Read(Pages.Single(new Label(new Point(20, 50), text, size)));
        var letters = document.GetPage(1).Letters;
        var found = (letters[^1].EndBaseLine.X - letters[0].StartBaseLine.X) / Pages.PointsPerMillimetre;

        TextMeter.Width(text, size, TextWeight.Regular).Should().BeApproximately(found, 0.05);
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

    [Fact]
    public void Text_is_as_wide_as_its_parts() =>
        Gen.Select(Gen.String[Gen.Char['A', 'z'], 0, 20], Gen.String[Gen.Char['α', 'ω'], 0, 20]).Sample((latin, greek) =>
            Math.Abs(
                TextMeter.Width(latin + greek, 10, TextWeight.Regular)
                - TextMeter.Width(latin, 10, TextWeight.Regular)
                - TextMeter.Width(greek, 10, TextWeight.Regular)) < 1e-9);
}
