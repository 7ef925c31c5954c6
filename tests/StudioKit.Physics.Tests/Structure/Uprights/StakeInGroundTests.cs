using StudioKit.Physics.Structure.Uprights;

namespace StudioKit.Physics.Tests.Structure.Uprights;

public sealed class StakeInGroundTests
{
    /// <summary>
    /// The ground presses with three times its passive pressure, 3γBK_p·z, on one side down to the tip (Broms 1964). Summed slice by slice about the tip that is all that stands against a push
    /// at any height, which the closed form turns into the test pull's moment: 0.1 %.
    /// </summary>
    [Theory]
    [InlineData(18_000, 0.027, 3.0, 0.2)]
    [InlineData(16_000, 0.02, 2.5, 0.35)]
    public void What_a_stake_holds_is_the_grounds_pressure_summed_about_its_tip(double weight, double breadth, double passive, double depth)
    {
        var ground = Slices(depth, z => 3 * weight * breadth * passive * z * (depth - z));
        var pull = ground / (0.3 + depth);

        StakeInGround.MomentAboutTip(pull, 0.3, depth).Should().BeApproximately(ground, 0.001 * ground);
        (StakeInGround.MomentAboutTip(pull, 0.3, depth) / (0.8 + depth)).Should().BeApproximately(0.5 * weight * breadth * passive * Math.Pow(depth, 3) / (0.8 + depth), 0.001 * pull);
    }

    /// <summary>Broms (1964): f = 0.82·√(P/(γ·B·K_p)), given to two digits: 1 %. There the ground has taken up all of the push, and the moment is P·(e + 2f/3).</summary>
    [Theory]
    [InlineData(18_000, 0.027, 3.0, 0.3, 12)]
    [InlineData(16_000, 0.04, 2.5, 0.4, 25)]
    public void A_stake_is_bent_most_where_the_ground_has_taken_up_the_push(double weight, double breadth, double passive, double depth, double push)
    {
        var ground = 0.5 * weight * breadth * passive * Math.Pow(depth, 3);
        var f = StakeInGround.DepthOfGreatestMoment(push, ground, depth);

        f.Should().BeApproximately(0.82 * Math.Sqrt(push / (weight * breadth * passive)), 0.01 * f);
        Slices(f, z => 3 * weight * breadth * passive * z).Should().BeApproximately(push, 0.001 * push);
        var moment = (push * (0.5 + f)) - Slices(f, z => 3 * weight * breadth * passive * z * (f - z));
        StakeInGround.GreatestMoment(push, 0.5, f).Should().BeApproximately(moment, 0.001 * moment);
    }

    [Fact]
    public void A_stake_that_holds_nothing_is_bent_most_at_its_tip_and_never_below() =>
        Gen.Select(Gen.Double[0.1, 100], Gen.Double[0, 5], Gen.Double[0.05, 1]).Sample((push, moment, depth) =>
            StakeInGround.DepthOfGreatestMoment(push, moment, depth) <= depth && StakeInGround.DepthOfGreatestMoment(push, 0, depth) == depth);

    [Fact]
    public void Stakes_of_no_depth_are_refused() =>
        FluentActions.Invoking(() => StakeInGround.MomentAboutTip(20, 0.3, 0)).Should().Throw<ArgumentOutOfRangeException>();

    private static double Slices(double depth, Func<double, double> pressure)
    {
        const int Count = 20_000;
        return Enumerable.Range(0, Count).Sum(i => pressure((i + 0.5) * depth / Count) * depth / Count);
    }
}
