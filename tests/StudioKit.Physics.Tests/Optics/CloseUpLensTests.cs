using StudioKit.Physics.Optics;

namespace StudioKit.Physics.Tests.Optics;

public sealed class CloseUpLensTests
{
    /// <summary>Article "Close-up lens": +2 focuses at 500 mm, +4 at 250 mm; +1, +2 and +4 stack to +7.</summary>
    [Theory]
    [InlineData(2, 0.5)]
    [InlineData(4, 0.25)]
    [InlineData(1 + 2 + 4, 1.0 / 7)]
    public void With_the_main_lens_at_infinity_it_focuses_at_its_own_focal_length(double power, double distance) =>
        CloseUpLens.FocusDistanceAtInfinity(power).Should().BeApproximately(distance, 1e-12);

    /// <summary>Article "Close-up lens", X/(d·X + 1): +3 on a lens at 1.5 m focuses at 0.2727 m and enlarges 5.5 times.</summary>
    [Fact]
    public void With_the_main_lens_nearer_it_focuses_nearer_still()
    {
        CloseUpLens.FocusDistance(3, 1.5).Should().BeApproximately(0.2727, 0.00005);
        CloseUpLens.MagnificationGain(3, 1.5).Should().BeApproximately(5.5, 1e-12);
    }

    [Fact]
    public void A_very_far_main_focus_is_infinity_focus() =>
        CloseUpLens.FocusDistance(3, 1e9).Should().BeApproximately(CloseUpLens.FocusDistanceAtInfinity(3), 1e-9);

    [Fact]
    public void A_100_mm_lens_with_five_dioptres_gives_half_life_size() =>
        CloseUpLens.MagnificationAtInfinity(5, 0.1).Should().BeApproximately(0.5, 1e-12);

    [Theory]
    [InlineData(0)]
    [InlineData(-2)]
    [InlineData(double.NaN)]
    public void A_power_that_brings_nothing_closer_is_refused(double power)
    {
        FluentActions.Invoking(() => CloseUpLens.FocusDistanceAtInfinity(power)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => CloseUpLens.FocusDistance(power, 1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => CloseUpLens.MagnificationGain(power, 1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => CloseUpLens.MagnificationAtInfinity(power, 0.1)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
