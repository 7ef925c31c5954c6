using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Physics.Tests.Optics;

/// <summary>A stem out of focus keeps a strip of each pencil of rays off a sheet that is burnt out behind it.</summary>
public sealed class StrayStemTests
{
    private static readonly Stops Margin = new(2.0 / 3);

    /// <summary>By hand: 60 mm from a pupil of 10 mm, 30 mm behind, the pencil is half the pupil wide; 10/60 is m/N_e at life size and f/6.</summary>
    [Fact]
    public void Pencil_grows_from_the_plane_in_focus_as_from_the_entrance_pupil() =>
        StrayStem.PencilWidth(Length.FromMillimeters(30), 1, 6).Millimeters.Should().BeApproximately(10.0 * 30 / 60, 1e-9);

    // What a pencil half as wide again as the circle of confusion allows at the edge of the depth of field is blurred half as wide again: Conrad's geometry once more.
    [Fact]
    public void Pencil_at_the_far_limit_of_depth_of_field_is_what_that_limit_allows()
    {
        var stack = OpticalStack.FromExtension(
            Length.FromMillimeters(100), Length.FromMillimeters(50), new FNumber(16), Length.FromMillimeters(36), Length.FromMillimeters(24));
        var far = DepthOfField.Of(stack, Length.FromMillimeters(0.03)).Far!.Value;
        var u = stack.SubjectToEntrancePupil!.Value;

        // A point there is imaged to 0.03 mm; thrown back to the plane in focus that is 0.03/m, and as seen from the pupil (1 + d/u) times that where the point lies.
        var pencil = StrayStem.PencilWidth(far, stack.Magnification.Value, stack.EffectiveFNumber.Value);

        (pencil / (1 + (far / u))).Millimeters.Should().BeApproximately(0.03 / stack.Magnification.Value, 1e-9);
    }

    [Fact]
    public void Blocked_share_is_that_of_rays_counted_one_by_one()
    {
        var random = new Random(20);
        for (var s = 0.05; s < 1; s += 0.1)
        {
            var (inside, blocked) = (0, 0);
            for (var i = 0; i < 200_000; i++)
            {
                var (x, y) = ((2 * random.NextDouble()) - 1, (2 * random.NextDouble()) - 1);
                inside += (x * x) + (y * y) < 1 ? 1 : 0;
                blocked += (x * x) + (y * y) < 1 && Math.Abs(x) < s ? 1 : 0;
            }

            // Four standard errors of a share counted over some 157 000 rays.
            Share(s).Should().BeApproximately((double)blocked / inside, 4 * Math.Sqrt(0.25 / inside));
        }
    }

    [Fact]
    public void Blocked_share_is_the_integral_of_chords() => Gen.Double[0.001, 0.999].Sample(s =>
    {
        const int steps = 4000;
        var sum = Enumerable.Range(0, steps).Sum(i => 2 * Math.Sqrt(1 - Math.Pow(((2 * (i + 0.5) / steps) - 1) * s, 2)) * 2 * s / steps);
        return Math.Abs(Share(s) - (sum / Math.PI)) < 1e-5;
    });

    /// <summary>Exact: chords at half the radius cut off a third of a disc's area each less a triangle: f = 1/3 + √3/(2π).</summary>
    [Fact]
    public void A_stem_half_as_wide_as_the_pencil_keeps_off_a_third_and_a_bit_more_than_a_quarter() =>
        Share(0.5).Should().BeApproximately((1.0 / 3) + (Math.Sqrt(3) / (2 * Math.PI)), 1e-12);

    [Theory]
    [InlineData(0, 5, 0)]
    [InlineData(0, 0, 0)]
    [InlineData(5, 5, 1)]
    [InlineData(9, 5, 1)]
    [InlineData(0.001, 0, 1)]
    public void No_stem_keeps_nothing_off_and_one_as_wide_as_the_pencil_all(double width, double pencil, double share) =>
        StrayStem.BlockedShare(Length.FromMillimeters(width), Length.FromMillimeters(pencil)).Should().Be(share);

    [Fact]
    public void A_wider_stem_keeps_more_off() => Gen.Double[0, 1.5].Select(Gen.Double[0, 1.5]).Where((one, other) => one < other).Sample((one, other) =>
        Share(one) <= Share(other) && (other > 1 || Share(one) < Share(other)));

    [Fact]
    public void The_widest_stem_that_vanishes_uses_up_the_margin() => Gen.Double[0.01, 6].Select(Gen.Double[0.1, 50]).Sample((margin, pencil) =>
    {
        var widest = StrayStem.WidestVanishing(new Stops(margin), Length.FromMillimeters(pencil));
        var left = 1 - StrayStem.BlockedShare(widest, Length.FromMillimeters(pencil));
        return Math.Abs(Math.Log2(1 / left) - margin) < 1e-6;
    });

    [Fact]
    public void From_the_distance_at_which_a_stem_vanishes_on_it_is_the_widest_that_does() =>
        Gen.Double[0.05, 5].Select(Gen.Double[0.01, 3], Gen.Double[0.05, 2], Gen.Double[2, 40]).Sample((width, margin, m, effective) =>
        {
            var from = StrayStem.VanishesFrom(Length.FromMillimeters(width), new Stops(margin), m, effective)!.Value;
            var widest = StrayStem.WidestVanishing(new Stops(margin), StrayStem.PencilWidth(from, m, effective));
            return Math.Abs(widest.Millimeters - width) < 1e-9 * width;
        });

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Before_a_sheet_that_does_not_clip_every_stem_shows(double margin)
    {
        StrayStem.WidestVanishing(new Stops(margin), Length.FromMillimeters(6)).Millimeters.Should().BeApproximately(0, 1e-9);
        StrayStem.VanishesFrom(Length.FromMillimeters(1), new Stops(margin), 0.2, 10).Should().BeNull();
    }

    // Rays from both rims of the pupil through both edges of the field, by hand: pupil 12 mm, 120 mm before a field of 60 mm; 300 mm behind it the outermost ray goes
    // from 6 mm on one side to 30 mm on the other in 120 mm, and on by the same slope: 30 + 36·300/120 = 120 mm, twice.
    [Fact]
    public void Room_that_the_camera_looks_through_is_bounded_by_rays_from_the_pupils_rim() =>
        StrayStem.SeenAcross(Length.FromMillimeters(60), Length.FromMillimeters(300), Length.FromMillimeters(120), 1, 10).Millimeters.Should().BeApproximately(240, 1e-9);

    [Fact]
    public void Impossible_stems_and_cameras_are_refused()
    {
        FluentActions.Invoking(() => StrayStem.BlockedShare(Length.FromMillimeters(-1), Length.FromMillimeters(1))).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("width");
        FluentActions.Invoking(() => StrayStem.BlockedShare(Length.FromMillimeters(1), Length.FromMillimeters(-1))).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("pencil");
        FluentActions.Invoking(() => StrayStem.PencilWidth(Length.FromMillimeters(-1), 1, 8)).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("offset");
        FluentActions.Invoking(() => StrayStem.PencilWidth(Length.Zero, 0, 8)).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("magnification");
        FluentActions.Invoking(() => StrayStem.VanishesFrom(Length.FromMillimeters(1), Margin, 1, 0)).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("effectiveFNumber");
        FluentActions.Invoking(() => StrayStem.VanishingShare(new Stops(double.NaN))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => StrayStem.SeenAcross(Length.Zero, Length.Zero, Length.Zero, 1, 8)).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("pupilDistance");
    }

    private static double Share(double s) => StrayStem.BlockedShare(Length.FromMillimeters(s), Length.FromMillimeters(1));
}
