using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Layout;

public sealed class TextWrapTests
{
    [Fact]
    public void Lines_fit_the_width_and_lose_no_letter() =>
        Gen.Select(Gen.String[Gen.Char['a', 'z'], 1, 60].Array[1, 30], Gen.Double[5, 100]).Sample((words, width) =>
        {
            var lines = TextWrap.Lines(string.Join(' ', words), width, 10, TextWeight.Regular);

            lines.Should().OnlyContain(line => TextMeter.Width(line, 10, TextWeight.Regular) <= width + 1e-6);
            string.Concat(lines).Replace(" ", "", StringComparison.Ordinal).Should().Be(string.Concat(words));
        });

    [Fact]
    public void A_number_stays_with_its_unit() =>
        TextWrap.Lines("set to 450\u00A0mm", TextMeter.Width("set to 450", 10, TextWeight.Regular), 10, TextWeight.Regular)
            .Should().Equal("set to", "450\u00A0mm");

    [Fact]
    public void A_mixed_fraction_stays_in_one_piece() =>
        TextWrap.Lines("has +1 1/3 stop to spare", TextMeter.Width("+1 1/3 stop", 10, TextWeight.Regular), 10, TextWeight.Regular)
            .Should().Contain(line => line.Contains("1 1/3 stop"));
}
