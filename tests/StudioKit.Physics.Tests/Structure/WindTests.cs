using StudioKit.Physics.Structure;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure;

public sealed class WindTests
{
    private static readonly WindTippingCase Worked = new(
        Speed.FromMetersPerSecond(8),
        [new WindSurface("panel on edge", 0.24, Wind.PlateDrag, 0.75)],
        Mass.FromKilograms(3.5),
        Length.FromMeters(0.2),
        Length.FromMeters(0.2),
        0.4,
        1.5);

    /// <summary>Drag equation and flat-plate coefficient as NASA Glenn gives them; a plate of 0.24 m² at 0.75 m, 3.5 kg on 0.4 m: 0.5 %.</summary>
    [Fact]
    public void A_panel_across_a_fresh_breeze_tips_and_the_ballast_is_named()
    {
        var result = WindTipping.Of(Worked);

        result.Pressure.Pascals.Should().BeApproximately(39.2, 0.005 * 39.2);
        result.Force.Newtons.Should().BeApproximately(12.04, 0.005 * 12.04);
        result.Overturning.NewtonMeters.Should().BeApproximately(9.03, 0.005 * 9.03);
        result.Holding.NewtonMeters.Should().BeApproximately(6.865, 0.005 * 6.865);
        result.Safety.Should().BeApproximately(0.760, 0.005 * 0.760);
        result.TippingSpeed!.Value.MetersPerSecond.Should().BeApproximately(6.97, 0.005 * 6.97);
        result.BallastAtCentre.Kilograms.Should().BeApproximately(3.41, 0.005 * 3.41);
    }

    [Fact]
    public void The_ballast_named_gives_the_safety_asked_for() =>
        Gen.Select(Gen.Double[0.5, 20], Gen.Double[0.01, 2], Gen.Double[0.1, 2], Gen.Double[0.1, 1], Gen.Double[1, 20]).Sample(
            (speed, area, height, arm, mass) =>
            {
                var studio = Worked with
                {
                    Speed = Speed.FromMetersPerSecond(speed),
                    Surfaces = [new WindSurface("sheet", area, 1.28, height)],
                    LeewardArm = Length.FromMeters(arm),
                    Mass = Mass.FromKilograms(mass),
                };
                var ballast = WindTipping.Of(studio).BallastAtCentre;
                var safety = WindTipping.Of(studio with { Mass = studio.Mass + ballast }).Safety!.Value;
                return ballast > Mass.Zero ? Math.Abs(safety - 1.5) < 1e-9 : safety >= 1.5 - 1e-9;
            });

    [Fact]
    public void The_tipping_gust_just_lifts_the_windward_feet() =>
        WindTipping.Of(Worked with { Speed = WindTipping.Of(Worked).TippingSpeed!.Value }).Safety.Should().BeApproximately(1, 1e-9);

    [Fact]
    public void In_still_air_nothing_tips()
    {
        var result = WindTipping.Of(Worked with { Speed = Speed.Zero });

        result.Safety.Should().BeNull();
        result.BallastAtCentre.Should().Be(Mass.Zero);
    }

    /// <summary>World Meteorological Organization: a moderate breeze begins at 5.5 m/s; 1.225/2·5.5² Pa.</summary>
    [Fact]
    public void A_moderate_breeze_presses_with_18_5_pascals() => Wind.Pressure(5.5).Should().BeApproximately(18.53, 0.005);

    [Fact]
    public void A_studio_without_mass_is_refused()
    {
        var act = () => WindTipping.Of(Worked with { Mass = Mass.Zero });

        act.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("Mass");
    }
}
