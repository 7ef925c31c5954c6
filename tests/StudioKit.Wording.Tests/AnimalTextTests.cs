using StudioKit.Kits;
using StudioKit.Planning;
using UnitsNet;

namespace StudioKit.Wording.Tests;

public sealed class AnimalTextTests
{
    [Theory]
    [InlineData(71.99, "71")]
    [InlineData(72, "72")]
    [InlineData(9.7, "9.5")]
    [InlineData(8.2, "8")]
    public void A_length_that_is_shown_whole_is_never_rounded_up(double millimetres, string text) => AnimalText.Of(Length.FromMillimeters(millimetres)).Should().Be($"{text} mm");

    [Fact]
    public void The_first_range_begins_with_nothing()
    {
        AnimalText.Range(Length.Zero, Length.FromMillimeters(36)).Should().Be("up to 36");
        AnimalText.Range(Length.FromMillimeters(36), Length.FromMillimeters(72)).Should().Be("36 to 72");
    }

    /// <summary>An inch is 25.4 mm: 36 mm are 1.417 in, an eighth below is 1 3/8; 72 mm are 2.835 in, 2 3/4.</summary>
    [Fact]
    public void A_range_is_told_in_both_units_where_both_are_asked_for()
    {
        string In(TextUnits units) => new PlanUnits(units, WrittenLengths.None).Tell(() => AnimalText.Range(Length.FromMillimeters(36), Length.FromMillimeters(72)));

        In(TextUnits.Both).Should().Be("36 to 72 (1 3/8 to 2 3/4)");
        In(TextUnits.Inches).Should().Be("1 3/8 to 2 3/4");
    }
}
