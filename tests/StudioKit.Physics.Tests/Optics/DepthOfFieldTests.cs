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

    /// <summary>photomacrography.net thread 22855, λ/NA² at 550 nm in µm; printed to three figures, 0.5 %.</summary>
    [Theory]
    [InlineData(0.10, 55.0)]
    [InlineData(0.14, 28.1)]
    [InlineData(0.20, 13.8)]
    [InlineData(0.25, 8.80)]
    [InlineData(0.40, 3.44)]
    public void The_wave_s_own_depth_agrees_with_the_published_table(double aperture, double micrometres) =>
        (DepthOfField.WaveTotal(aperture, 1, 0) * 1e6).Should().BeApproximately(micrometres, 0.005 * micrometres);

    /// <summary>Microscopy tutorial's formula by hand: NA 0.10, 5×, 4.5 µm: 55.0 + 9.0 µm. And at 2.5×, f/4: NA 0.08929, 68.99 µm.</summary>
    [Fact]
    public void The_microscopists_depth_adds_wave_and_detector()
    {
        (DepthOfField.WaveTotal(0.10, 5, 4.5e-6) * 1e6).Should().BeApproximately(64.0, 0.064);

        var effective = EffectiveAperture.EffectiveFNumber(4, 2.5);
        effective.Should().BeApproximately(14, 1e-12);
        DepthOfField.ObjectAperture(2.5, effective).Should().BeApproximately(0.08929, 5e-6);
        (DepthOfField.WaveTotal(DepthOfField.ObjectAperture(2.5, effective), 2.5, 0) * 1e6).Should().BeApproximately(68.99, 0.07);
        (DepthOfField.CloseUpTotal(2.5, effective, 0.04464e-3) * 1000).Should().BeApproximately(0.200, 0.0002);
    }

    [Fact]
    public void The_detector_s_term_is_the_geometrical_depth() =>
        Gen.Select(Gen.Double[0.5, 10], Gen.Double[5, 60], Gen.Double[1e-6, 5e-5]).Sample((m, n, e) =>
        {
            var na = DepthOfField.ObjectAperture(m, n);
            var detector = DepthOfField.WaveTotal(na, m, e) - DepthOfField.WaveTotal(na, m, 0);
            return Math.Abs((detector / DepthOfField.CloseUpTotal(m, n, e)) - 1) < 1e-6;
        });

    [Fact]
    public void Depth_of_focus_is_the_depth_of_field_carried_to_the_sensor() =>
        DepthOfField.DepthOfFocus(22, 30e-6).Should().BeApproximately(0.5 * 0.5 * DepthOfField.CloseUpTotal(0.5, 22, 30e-6), 1e-12);

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

    [Theory]
    [InlineData(0)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void A_numerical_aperture_that_air_does_not_allow_is_refused(double aperture) =>
        FluentActions.Invoking(() => DepthOfField.WaveTotal(aperture, 1, 0)).Should().Throw<ArgumentOutOfRangeException>();
}
