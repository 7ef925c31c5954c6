using StudioKit.Web.Editing;

namespace StudioKit.Web.Tests.Editing;

public sealed class LineNumbersTests
{
    [Fact]
    public void Every_line_has_its_number_and_wrong_ones_a_cross() =>
        LineNumbers.Of("a\nb\n", new HashSet<int> { 2 }).Should().Be("1\n✕ 2\n3");

    [Fact]
    public void A_text_of_a_million_lines_is_not_numbered_beyond_what_a_kit_may_have()
    {
        var numbers = LineNumbers.Of(new string('\n', 1_000_000), new HashSet<int>());

        numbers.Split('\n').Should().HaveCount(LineNumbers.Most + 1);
        numbers.Should().EndWith("\n…");
    }
}
