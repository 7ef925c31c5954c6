using StudioKit.Physics.Light.Standing;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light.Standing;

public sealed class AngularSizeTests
{
    /// <summary>A face of a cube from its middle fills a sixth of the sphere, and 90° either way.</summary>
    [Fact]
    public void A_face_of_a_cube_fills_a_sixth_of_the_sphere()
    {
        var (side, half) = (Length.FromCentimeters(20), Length.FromCentimeters(10));

        AngularSize.SolidAngle(side, side, half).Should().BeApproximately(4 * Math.PI / 6, 1e-12);
        AngularSize.Of(side, half).Degrees.Should().BeApproximately(90, 1e-12);
    }

    /// <summary>A cone of 60° to either side takes in a quarter of the sphere: 2π·(1 − cos 60°).</summary>
    [Fact]
    public void A_disc_that_reaches_60_degrees_to_either_side_fills_a_quarter_of_the_sphere() =>
        AngularSize.SolidAngle(Length.FromMeters(2 * Math.Sqrt(3)), Length.FromMeters(1)).Should().BeApproximately(Math.PI, 1e-12);

    /// <summary>Far off, area over the square of the distance.</summary>
    [Fact]
    public void From_afar_a_light_fills_its_area_over_the_square_of_its_distance() => Gen.Select(Gen.Double[0.01, 0.3], Gen.Double[0.01, 0.3]).Sample((width, height) =>
        AngularSize.SolidAngle(Length.FromMeters(width), Length.FromMeters(height), Length.FromMeters(100)).Should().BeApproximately(width * height / 1e4, width * height * 1e-8));

    [Fact]
    public void A_light_moved_further_away_looks_smaller() => Gen.Select(Gen.Double[0.01, 1], Gen.Double[0.01, 1], Gen.Double[0.05, 3], Gen.Double[1.01, 3]).Sample((width, height, distance, factor) =>
    {
        var (w, h, d) = (Length.FromMeters(width), Length.FromMeters(height), Length.FromMeters(distance));

        AngularSize.SolidAngle(w, h, d * factor).Should().BeLessThan(AngularSize.SolidAngle(w, h, d));
        AngularSize.SolidAngle(w, d * factor).Should().BeLessThan(AngularSize.SolidAngle(w, d));
        AngularSize.Of(w, d * factor).Should().BeLessThan(AngularSize.Of(w, d));
    });

    [Fact]
    public void A_light_at_no_distance_is_refused()
    {
        var size = () => AngularSize.SolidAngle(Length.FromMeters(1), Length.FromMeters(1), Length.Zero);

        size.Should().Throw<ArgumentOutOfRangeException>();
    }
}
