
namespace StudioKit.Planning.Tests.ByHand;

/// <summary>How sharp a subject is, through a plan. f = 60 mm at half life size with equal pupils: the pupil lies 180 mm before the subject.</summary>
public sealed class SharpnessTests
{
    // Common practice, no source: where a kit says no more, an animal is a third as high as long, and half of that must be sharp.
    [Theory]
    [InlineData("", 5)]
    [InlineData(", height: 8 mm", 4)]
    [InlineData(", height: 8 mm, depth: 3 mm", 3)]
    public void What_must_be_sharp_is_half_the_height_and_that_a_third_of_the_length(string more, double depth) =>
        Of(more).SharpnessCurve!.Depth.Millimeters.Should().BeApproximately(depth, 1e-9);

    // Similar triangles: a point δ before the plane in focus is spread over (f/N)·δ/(180 − δ) of that plane, one behind it over (f/N)·δ/(180 + δ). At
    // f/2.8 (exactly √8) and δ = 2.5 mm: 0.2988 mm and 0.2906 mm; diffraction (some 0.01 mm) in quadrature adds a thousandth.
    [Fact]
    public void Blur_is_told_at_the_subject()
    {
        var widest = Of("").SharpnessCurve!.Points[0];

        widest.Aperture.Nominal.Should().Be("f/2.8");
        widest.Nearest.Millimeters.Should().BeApproximately(0.2988, 0.001);
        widest.Farthest.Millimeters.Should().BeApproximately(0.2906, 0.001);
    }

    // Smear m·v·t over pixels of 6 µm: half of 20 mm/s for 1/200 s (1/203.2 on the exact scale) is 49.2 µm; of two lights the longer flash counts.
    [Fact]
    public void A_moving_subject_smears_by_magnification_speed_and_time()
    {
        var exposure = Of(", speed: 20 mm/s", one: "full-power-duration: 1/50 s");
        var flash = exposure.Lights.Max(light => light.FlashDuration.Seconds);

        exposure.Sharpness.Smear.Subject.Pixels.Should().BeApproximately(0.5 * 20e-3 / 203.19 / 6e-6, 0.01);
        exposure.Sharpness.Smear.FlashPixels.Should().BeApproximately(0.5 * 20e-3 * flash / 6e-6, 1e-6);
        exposure.Lights.Min(light => light.FlashDuration.Seconds).Should().BeLessThan(flash / 2);
    }

    // Between frames of a stack the rail is turned and settles, 2 s (common practice, no source), unless a flash takes longer: 60 s times its power.
    [Fact]
    public void A_stack_waits_for_hand_and_slowest_flash()
    {
        var quick = Of(", depth: 20 mm").Sharpness;
        var slow = Of(", depth: 20 mm", one: "recycle-time: 60 s");
        var power = slow.Lights.Single(light => light.Flash == "one").Power.Fraction;

        (60 * power).Should().BeGreaterThan(2);
        quick.StackTime!.Value.Seconds.Should().BeApproximately(2 * (quick.StackFrames!.Value - 1), 1e-9);
        slow.Sharpness.StackTime!.Value.Seconds.Should().BeApproximately(60 * power * (quick.StackFrames!.Value - 1), 1e-6);
    }

    private static ExposurePlan Of(string subject, string one = "") => HandKit.Plan(
        $"subjects: [{{name: crane fly, group: flying-insects, length: 30 mm{subject}}}]\n" + HandKit.White, one: one).Exposures.Single();
}
