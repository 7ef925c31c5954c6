namespace StudioKit.Planning.Tests.ByHand;

/// <summary>N_e = N·(1 + m/p), m the lens's own magnification and p its pupil ratio (working f-number with pupil magnification).</summary>
public sealed class PupilRatioTests
{
    private const string Tube = "accessories: {extension-tubes: [{name: tube, length: 30 mm}]}\n";

    // At 1:2 by the lens's own travel: 1 + ½/2 = 1.25, 1 + ½/½ = 2, 1 + ½ = 1.5.
    [Theory]
    [InlineData(2, 1.25)]
    [InlineData(0.5, 2)]
    [InlineData(1, 1.5)]
    public void The_loss_of_a_close_up_is_less_the_wider_the_exit_pupil(double pupil, double factor)
    {
        var exposure = Only("", FormattableString.Invariant($"pupil-ratio: {pupil}"), "");

        exposure.Framing.EffectiveApertureFactor.Should().BeApproximately(factor, 1e-9);
        exposure.EffectiveAperture.Value.Should().BeApproximately(16 * factor, 1e-6);
        exposure.Lights[0].Budget.Lines.Single(line => line.Item == "Close focus").Stops.Value.Should().BeApproximately(-2 * Math.Log2(factor), 1e-9);
    }

    // The camera shows the f-number of the lens's own focusing, which must not be counted again. A lens that comes to 1:2 by itself and stands on a
    // tube of half its focal length at 1:1: N·(1 + 1/p) in all, N·(1 + ½/p) of it its own. For p = 2: 1.5/1.25 = 1.2. For p = ½: 3/2. For p = 1: 2/1.5.
    [Theory]
    [InlineData(2, 1.2)]
    [InlineData(0.5, 1.5)]
    [InlineData(1, 2 / 1.5)]
    public void A_camera_that_shows_the_effective_f_number_has_counted_the_lenss_own_loss_with_its_pupils(double pupil, double factor)
    {
        var exposure = Only(
            Tube, FormattableString.Invariant($"pupil-ratio: {pupil}"), "reports-effective-f-number: yes",
            "largest-magnification: 1:1, magnifications: [1:2]", "largest-magnification: 1:2, magnifications: [1:1]");

        exposure.Framing.Accessories.Should().Equal("tube");
        exposure.Framing.EffectiveApertureFactor.Should().BeApproximately(factor, 1e-9);
    }

    private static ExposurePlan Only(string sections, string lens, string camera, string from = "kit:", string to = "kit:") =>
        KitText.Plan(HandKit.Of(sections + HandKit.White, camera, lens).Replace(from, to, StringComparison.Ordinal)).Exposures.Single();
}
