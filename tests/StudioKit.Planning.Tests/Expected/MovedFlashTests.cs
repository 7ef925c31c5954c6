using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Planning.Tests.Expected;

public sealed class MovedFlashTests
{
    private static readonly Length Now = Length.FromCentimeters(40);
    private static readonly Length Shortest = Length.FromCentimeters(10);

    /// <summary>Inverse square law: two stops more at half the distance, one less at √2 times it.</summary>
    [Theory]
    [InlineData(2, 20)]
    [InlineData(-1, 56.5685)]
    [InlineData(0, 40)]
    public void Light_goes_with_the_square_of_the_nearness(double change, double centimetres) =>
        MovedFlash.ByInverseSquare(Now, change, Shortest)!.Value.Centimeters.Should().BeApproximately(centimetres, 1e-3);

    [Fact]
    public void A_flash_never_comes_nearer_than_it_can_stand()
    {
        MovedFlash.ByInverseSquare(Now, 4.1, Shortest).Should().BeNull();
        MovedFlash.ByPlan(Now, 4.1, Shortest, InverseSquare).Should().BeNull();
    }

    /// <summary>A straight line over a step of 7 % misses a logarithm by at most (ln 0.93)²/8, 0.07 %.</summary>
    [Fact]
    public void A_plan_that_keeps_the_inverse_square_law_says_the_same_as_the_law() =>
        Gen.Double[-1.5, 3.5].Sample(change =>
        {
            var law = MovedFlash.ByInverseSquare(Now, change, Shortest)!.Value;
            var plan = MovedFlash.ByPlan(Now, change, Shortest, InverseSquare)!.Value;
            return Math.Abs((plan / law) - 1) < 0.0008;
        });

    /// <summary>An uneven panel's darkest corner gains up to a place and loses again: 0.8 stop is all there is to have.</summary>
    [Theory]
    [InlineData(0.7, true)]
    [InlineData(0.9, false)]
    public void Where_coming_closer_darkens_the_corner_there_may_be_no_distance_that_will_do(double change, bool isThere) =>
        (MovedFlash.ByPlan(Now, change, Shortest, distance => 0.8 - Math.Pow((distance.Centimeters - 25) / 15, 2) * 0.8) is not null).Should().Be(isThere);

    [Fact]
    public void Without_a_planned_light_the_inverse_square_law_stands_in() =>
        MovedFlash.ByPlan(Now, 2, Shortest, _ => null)!.Value.Centimeters.Should().BeApproximately(20, 1e-9);

    private static double? InverseSquare(Length distance) => -2 * Math.Log2(distance.Meters);
}
