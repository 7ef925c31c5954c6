using StudioKit.Physics.Light.Covers;

namespace StudioKit.Physics.Tests.Light.Covers;

public sealed class ClearWallTests
{
    /// <summary>Acrylic, n = 1.49: one face turns back 0.03873, a wall passes 0.9254 (Fresnel formulae, evaluated by an independent program); makers print 92 %.</summary>
    [Fact]
    public void An_acrylic_wall_passes_as_much_as_its_makers_print()
    {
        ClearWall.FaceReflectance(1.49).Should().BeApproximately(0.03873, 5e-6);
        ClearWall.Transmittance(1.49).Should().BeApproximately(0.9254, 5e-5);
    }

    /// <summary>The textbooks' 4 % a face and 8 % a pane for n = 1.5, to half their last digit.</summary>
    [Fact]
    public void A_pane_turns_back_eight_hundredths_of_the_light_that_meets_it_head_on()
    {
        ClearWall.FaceReflectance(1.5).Should().BeApproximately(0.04, 0.0005);
        ClearWall.Reflectance(1.5).Should().BeApproximately(0.08, 0.005);
    }

    /// <summary>Water turns back 2 % head-on, 1 − 0.02 passes (Born and Wolf's example; ocean optics uses 0.02), to half the last digit.</summary>
    [Fact]
    public void A_water_surface_turns_back_two_hundredths() => ClearWall.FaceReflectance(1.333).Should().BeApproximately(0.02, 0.005);

    /// <summary>At Brewster's angle, tan θ = n, one polarisation passes whole and the other loses ((n² − 1)/(n² + 1))² (Born and Wolf, §1.5).</summary>
    [Fact]
    public void At_Brewsters_angle_only_one_polarisation_is_turned_back()
    {
        const double N = 1.5;
        var other = Math.Pow(((N * N) - 1) / ((N * N) + 1), 2);

        ClearWall.FaceReflectance(N, Math.Atan(N)).Should().BeApproximately(other / 2, 1e-12);

        // The wall then passes all of one and (1 − r)/(1 + r) of the other.
        ClearWall.Transmittance(N, Math.Atan(N)).Should().BeApproximately((1 + ((1 - other) / (1 + other))) / 2, 1e-12);
    }

    /// <summary>Beyond the critical angle, 48.6° from water into air, all is turned back (Born and Wolf, §1.5).</summary>
    [Fact]
    public void Steeper_than_the_critical_angle_nothing_leaves_the_water()
    {
        var critical = Math.Asin(1 / 1.333);

        ClearWall.FaceReflectance(1 / 1.333, critical + 1e-6).Should().Be(1);
        ClearWall.FaceReflectance(1 / 1.333, critical - 0.01).Should().BeLessThan(0.6);
    }

    /// <summary>The 85 % that a maker's page gives for light from all sides, to its last digit and the absorption it has beside.</summary>
    [Fact]
    public void Light_from_all_sides_passes_less_than_light_head_on() => ClearWall.DiffuseTransmittance(1.49).Should().BeApproximately(0.85, 0.015);

    /// <summary>
    /// Photons of either polarisation, turned back or let through by chance at each face until they leave, with Fresnel's formulae in their other form of
    /// sines and tangents. Of 40,000 the standard error is at most 0.0025; four of it are allowed.
    /// </summary>
    [Theory]
    [InlineData(1.49, 5, 1)]
    [InlineData(1.49, 45, 1)]
    [InlineData(1.59, 60, 1)]
    [InlineData(1.52, 75, 1)]
    [InlineData(1.52, 40, 1.333)]
    public void A_wall_passes_as_much_as_photons_played_through_it(double index, double degrees, double beyond)
    {
        const int Photons = 40_000;
        var incidence = degrees * Math.PI / 180;
        var passed = PlayedPhotons.Passed(Photons, [1, index, beyond], incidence, 7);

        ClearWall.Transmittance(index, incidence, beyond).Should().BeApproximately(passed, 4 * 0.5 / Math.Sqrt(Photons));
    }

    [Fact]
    public void Air_turns_nothing_back() => ClearWall.Loss(1, 0.5).Value.Should().BeApproximately(0, 1e-12);

    /// <summary>Light takes its way back as it came (Stokes): the shares of a face are the same from both sides at the angles of refraction.</summary>
    [Fact]
    public void A_face_turns_back_as_much_from_behind() => Gen.Double[1.01, 2].Select(Gen.Double[0, 1.5]).Sample((n, incidence) =>
        Math.Abs(ClearWall.FaceReflectance(n, incidence) - ClearWall.FaceReflectance(1 / n, Math.Asin(Math.Sin(incidence) / n))) < 1e-9);

    [Theory]
    [InlineData(0.99)]
    [InlineData(double.NaN)]
    public void A_wall_of_an_index_under_that_of_air_is_refused(double index)
    {
        var wall = () => ClearWall.Transmittance(index);

        wall.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("refractiveIndex");
    }
}
