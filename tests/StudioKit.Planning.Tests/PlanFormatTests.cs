using UnitsNet;

namespace StudioKit.Planning.Tests;

public sealed class PlanFormatTests
{
    // At most two significant digits of an uncertainty, and the value to the same digit: JCGM 100:2008, 7.2.6.
    [Theory]
    [InlineData(446, 19.9, "446 mm ± 20 mm")]
    [InlineData(446, 123.4, "450 mm ± 120 mm")]
    [InlineData(96.3, 4.26, "96.3 mm ± 4.3 mm")]
    [InlineData(9.87, 0.314, "9.87 mm ± 0.31 mm")]
    [InlineData(446, 5, "446 mm")]
    public void An_uncertainty_is_said_to_two_digits_and_left_out_where_it_is_small(double length, double uncertainty, string said) =>
        PlanFormat.GiveOrTake(Length.FromMillimeters(length), Length.FromMillimeters(uncertainty)).Should().Be(said);
}
