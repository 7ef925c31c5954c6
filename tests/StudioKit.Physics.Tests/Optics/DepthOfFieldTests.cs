using StudioKit.Physics.Optics;

namespace StudioKit.Physics.Tests.Optics;

public sealed class DepthOfFieldTests
{
    /// <summary>Similar triangles at the entrance pupil, worked by an independent program; 1e-4. Millimetres.</summary>
    [Theory]
    [InlineData(100, 11, 0.03, 1, 0.7, 0.79879, 0.80408, 1.60287)]
    [InlineData(100, 16, 0.02, 0.25, 0.7, 6.8608, 7.0387, 13.8994)]
    [InlineData(50, 16, 0.03, 0.1, 1, 48.175, 58.407, 106.582)]
    public void Near_and_far_agree_with_the_triangles_at_the_entrance_pupil(
        double f, double marked, double circle, double m, double p, double near, double far, double total)
    {
        var zone = DepthOfField.Exact(
            m, EffectiveAperture.EffectiveFNumber(marked, m, p), f / 1000 * ((1 / m) + (1 / p)), circle / 1000);

        zone.Near.Millimeters.Should().BeApproximately(near, 1e-4 * near);
        zone.Far!.Value.Millimeters.Should().BeApproximately(far, 1e-4 * far);
        zone.Total!.Value.Millimeters.Should().BeApproximately(total, 1e-4 * total);
    }

    /// <summary>
    /// Independent route: two thin lenses with a stop between them, the edge ray traced from a point off the focused plane to the sensor, and the
    /// point moved until its spot is as wide as the circle of confusion. Knows nothing of pupils or principal planes.
    /// </summary>
    [Fact]
    public void Near_and_far_agree_with_rays_traced_through_an_asymmetrical_lens() =>
        Gen.Select(Gen.Double[0.08, 0.4], Gen.Double[0.08, 0.4], Gen.Double[0.005, 0.04], Gen.Double[0.1, 0.9], Gen.Double[0.15, 2])
            .Sample((f1, f2, gap, place, m) =>
            {
                var lens = new TwoLensTrace(f1, f2, gap, place * gap, StopDiameter: 0.008, m);
                const double circle = 30e-6;

                var zone = DepthOfField.Exact(m, lens.EffectiveFNumber, lens.SubjectToEntrancePupil, circle);

                return Math.Abs((zone.Near.Meters / lens.OffsetWithSpot(circle, towardsCamera: true)) - 1) < 1e-6
                    && Math.Abs((zone.Far!.Value.Meters / lens.OffsetWithSpot(circle, towardsCamera: false)) - 1) < 1e-6
                    && Math.Abs((lens.FocalLength * ((1 / m) + (1 / lens.PupilRatio)) / lens.SubjectToEntrancePupil) - 1) < 1e-9
                    && Math.Abs((EffectiveAperture.EffectiveFNumber(lens.MarkedFNumber, m, lens.PupilRatio) / lens.EffectiveFNumber) - 1) < 1e-9;
            });

    /// <summary>Geometry, f/11 and c = 0.03 mm at life size: pupil ratios 1, 0.7 and 0.5 give 1.320, 1.603 and 1.980 mm.</summary>
    [Theory]
    [InlineData(1, 1.320)]
    [InlineData(0.7, 1.603)]
    [InlineData(0.5, 1.980)]
    public void A_small_exit_pupil_deepens_the_field(double p, double total) =>
        (DepthOfField.CloseUpTotal(1, EffectiveAperture.EffectiveFNumber(11, 1, p), 30e-6) * 1000).Should().BeApproximately(total, 0.0005);

    [Fact]
    public void The_close_up_form_is_what_a_far_pupil_gives() =>
        Gen.Select(Gen.Double[0.1, 5], Gen.Double[4, 64]).Sample((m, n) =>
            Math.Abs((DepthOfField.Exact(m, n, 1e6, 30e-6).Total!.Value.Meters / DepthOfField.CloseUpTotal(m, n, 30e-6)) - 1) < 1e-6);

    /// <summary>From memory, any textbook: focused far away, the near limit lies at the hyperfocal distance f²/(N·c) and all behind is sharp.</summary>
    [Fact]
    public void Focused_far_away_the_near_limit_is_the_hyperfocal_distance()
    {
        const double f = 0.05, n = 8, circle = 30e-6, m = 1e-9;

        var zone = DepthOfField.Exact(m, EffectiveAperture.EffectiveFNumber(n, m), f / m, circle);

        zone.Far.Should().BeNull();
        ((f / m) - zone.Near.Meters).Should().BeApproximately(f * f / (n * circle), 1e-4);
    }

    [Fact]
    public void Depth_grows_as_the_aperture_closes_and_shrinks_as_magnification_grows() =>
        Gen.Select(Gen.Double[0.1, 5], Gen.Double[1.01, 2], Gen.Double[4, 32]).Sample((m, more, n) =>
            DepthOfField.CloseUpTotal(m, n * more, 20e-6) > DepthOfField.CloseUpTotal(m, n, 20e-6)
            && DepthOfField.CloseUpTotal(m * more, n, 20e-6) < DepthOfField.CloseUpTotal(m, n, 20e-6));

    /// <summary>Common practice, no source: near life size at f/11 the depth is a few millimetres or less.</summary>
    [Fact]
    public void Near_life_size_at_f_11_depth_is_a_few_millimetres_at_most() =>
        (DepthOfField.CloseUpTotal(1, EffectiveAperture.EffectiveFNumber(11, 1), 30e-6) * 1000).Should().BeInRange(0.3, 3);

    [Theory]
    [InlineData(0, 16, 0.1, 3e-5)]
    [InlineData(1, 0, 0.1, 3e-5)]
    [InlineData(1, 16, 0, 3e-5)]
    [InlineData(1, 16, 0.1, 0)]
    [InlineData(double.NaN, 16, 0.1, 3e-5)]
    [InlineData(1, double.NaN, 0.1, 3e-5)]
    [InlineData(1, 16, double.PositiveInfinity, 3e-5)]
    [InlineData(1, 16, 0.1, double.NaN)]
    public void An_impossible_picture_is_refused(double m, double n, double pupil, double circle) =>
        FluentActions.Invoking(() => DepthOfField.Exact(m, n, pupil, circle)).Should().Throw<ArgumentOutOfRangeException>();
}
