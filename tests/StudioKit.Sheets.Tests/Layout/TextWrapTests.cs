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

    [Theory]
    [InlineData("heath_edge_white_background", "heath_edge_", "white_", "background")]
    [InlineData("white-background-with-two-flashes", "white-", "background-", "with-two-", "flashes")]
    [InlineData("below/behind/beside", "below/behind/", "beside")]
    public void A_word_too_long_for_its_line_is_broken_behind_its_hyphens_and_the_like(string word, params string[] lines) =>
        TextWrap.Lines(word, TextMeter.Width("below/behind/", 10, TextWeight.Regular), 10, TextWeight.Regular).Should().Equal(lines);

    /// <remarks>Whatever the width, as long as the number itself has room.</remarks>
    [Theory]
    [InlineData("frame0412-0419and1/6.4power", "0412-0419", "1/6.4")]
    [InlineData("M8x90mmscrewwithnut2026-05-17", "90", "2026-05-17")]
    public void A_number_is_not_broken_while_a_line_holds_it(string word, params string[] numbers)
    {
        for (var width = 22.0; width < 60; width += 0.7)
        {
            TextWrap.Lines(word, width, 10, TextWeight.Regular).Should().Contain(line => line.Contains(numbers[0]), $"at {width} mm").And.Contain(line => line.Contains(numbers[1]), $"at {width} mm");
        }
    }

    [Fact]
    public void A_script_without_spaces_is_broken_between_its_signs_and_joined_without_spaces()
    {
        var lines = TextWrap.Lines("沼地の端で蛾を白い板の上に撮る、朝。", TextMeter.Width("沼地の端で", 10, TextWeight.Regular), 10, TextWeight.Regular);

        string.Concat(lines).Should().Be("沼地の端で蛾を白い板の上に撮る、朝。");
        lines.Should().OnlyContain(line => line.Length <= 6 && !line.StartsWith('、') && !line.StartsWith('。'));
    }

    [Fact]
    public void A_letter_is_never_parted_from_its_accent()
    {
        var word = string.Concat(Enumerable.Repeat("e\u0301", 40));

        TextWrap.Lines(word, 20, 10, TextWeight.Regular).Should().OnlyContain(line => line.Length % 2 == 0);
        TextWrap.Shortened(word, 20, 10, TextWeight.Regular).Should().MatchRegex("^(e\u0301)+…$");
    }
}
