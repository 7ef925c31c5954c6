using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>What a meter and a camera should read, against the plan's own promise and against hand arithmetic.</summary>
public sealed class ExpectedLightTests
{
    private const string Size = "width: 400 mm, depth: 400 mm";

    private static readonly FlashPower Quarter = new(0.25);

    // C/100·GN²·P/d² (ISO 1230, C = 250 of ISO 2720): 2.5·32²·¼/0.25² = 10,240 lx·s at 25 cm, a quarter of that at 50 cm. A 10 mm head at 25 cm lacks 0.1 %.
    [Theory]
    [InlineData(25, 10_240)]
    [InlineData(50, 2_560)]
    public void A_meter_in_the_beam_reads_what_the_guide_number_says(int centimetres, double expected)
    {
        var plan = HandKit.Plan(HandKit.White, panel: Size);

        new ExpectedLight(plan).InBeam(Light(plan, LightRole.Above), new ShotSettings(Quarter, Length.FromCentimeters(centimetres)))
            .Should().BeApproximately(expected, 0.002 * expected);
    }

    // A sheet lets through the same light however it scatters it: face down on it a meter reads T·E, half of 2.5·32²·¼/0.45² = 3160 lx·s. The lobe of a
    // poor diffuser, cosˢ, is brighter straight up by (s + 2)/2 and narrower by as much. 1 %: the sheet is worked out at points, straight lines between.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(6)]
    [InlineData(30)]
    public void A_meter_on_the_sheet_reads_the_light_that_comes_through_however_it_is_scattered(double exponent)
    {
        var plan = HandKit.Plan(HandKit.White, panel: FormattableString.Invariant($"{Size}, scatter-exponent: {exponent}"));

        new ExpectedLight(plan).OnPanel(plan.Kit.SetUps[0], new ShotSettings(Quarter)).Should().BeApproximately(1580, 16);
    }

    // Under a sheet that is swept up behind, "straight above the flash" is over the middle of the flat part: 400 mm of 800 mm.
    [Fact]
    public void A_meter_on_a_swept_sheet_lies_over_the_flash()
    {
        var plan = HandKit.Plan(HandKit.White, panel: "width: 400 mm, depth: 800 mm, sweep-radius: 1 m, sweep-angle: 22.91831°", frame: "kind: swept-table");

        new ExpectedLight(plan).OnPanel(plan.Kit.SetUps[0], new ShotSettings(Quarter)).Should().BeApproximately(1580, 30);
    }

    // The plan's promise, at its own settings: two ways to one number. 0.02 stop is what a meter's eye can tell.
    [Fact]
    public void A_frame_of_the_bare_panel_is_as_dark_and_as_bright_as_the_plan_promises()
    {
        var plan = HandKit.Plan(HandKit.White.Replace("distance: 45 cm", "distance: 20 cm, offset-right: 30 mm", StringComparison.Ordinal), panel: Size);
        var exposure = plan.Exposures.Single();
        var frame = Frame(plan, exposure.Lights[0].Power);

        frame.Darkest.Value.Should().BeApproximately(exposure.WhiteMargin!.Value.Value, 0.02);
        frame.Brightest.Value.Should().BeApproximately(exposure.BrightestMargin!.Value.Value, 0.02);
        (frame.Brightest - frame.Darkest).Value.Should().BeGreaterThan(0.5, "else the two could not be told apart");
    }

    // Light goes with power, speed and the square of the effective f-number: a stop less power, a stop more speed, two stops smaller aperture.
    [Fact]
    public void A_frame_follows_power_speed_and_aperture_stop_by_stop()
    {
        var plan = HandKit.Plan(HandKit.White, panel: Size);
        var usual = Frame(plan, Quarter).Darkest.Value;

        Frame(plan, new FlashPower(0.125)).Darkest.Value.Should().BeApproximately(usual - 1, 1e-9);
        Frame(plan, Quarter, iso: new IsoSpeed(800)).Darkest.Value.Should().BeApproximately(usual + 1, 1e-9);
        Frame(plan, Quarter, aperture: new FNumber(32)).Darkest.Value.Should().BeApproximately(usual - 2, 1e-9);
    }

    // A flash 40 mm to the right and 20 mm back of the middle: the frame is bright there and dark at the other corner; looking straight down, the frame's
    // top is the sheet's back. Straight over the flash, by hand: L = ½·E/π, E = 2.5·32²·¼/0.2² = 16,000; H = 0.65·L/24² against 78/400: 3.88 stops.
    [Fact]
    public void A_frame_lies_the_way_round_that_the_camera_sees_it()
    {
        var plan = HandKit.Plan(
            HandKit.White.Replace("distance: 45 cm", "distance: 20 cm, offset-right: 30 mm, offset-back: 20 mm", StringComparison.Ordinal), panel: Size);
        var margins = Frame(plan, Quarter).MarginsAt(9, 6);

        margins[0, 8].Should().BeApproximately(3.88, 0.03, "the flash stands under the upper right corner");
        margins[5, 0].Should().Be(margins.Cast<double>().Min());
        margins[0, 0].Should().BeLessThan(margins[0, 8]);
        margins[5, 8].Should().BeLessThan(margins[0, 8]);
    }

    // 0.65·ρ·Q/π/N_e² against 78/S (ISO 12232): Q = 2.5·32²·¼/0.4² = 4000 lx·s, N_e = 24, ISO 400: 18 % −0.01, twice as reflecting one stop more.
    [Theory]
    [InlineData(0.18)]
    [InlineData(0.36)]
    [InlineData(0.9)]
    public void A_card_lies_under_clipping_by_its_reflectance(double reflectance)
    {
        var plan = HandKit.Plan(HandKit.White, panel: Size);
        var expected = Math.Log2(0.65 * reflectance * 4000 / Math.PI / (24 * 24) / (78.0 / 400));

        new ExpectedLight(plan).OfCard(plan.Kit.SetUps[0], "rush 60 at 1:2", Light(plan, LightRole.Above), reflectance, new ShotSettings(Quarter))
            .Value.Should().BeApproximately(expected, 0.005);
    }

    // Each asked of one and the same account, which must not take the light of one distance for that of another: half as far is four times as bright
    // (3 %: nearer, the sheet's points stand farther apart for the slope of the light).
    [Fact]
    public void Light_of_another_distance_is_worked_out_anew()
    {
        var plan = HandKit.Plan(HandKit.White, panel: Size);
        var expected = new ExpectedLight(plan);
        var above = Light(plan, LightRole.Above);

        expected.OnPanel(plan.Kit.SetUps[0], new ShotSettings(Quarter)).Should().BeApproximately(1580, 16);
        expected.OnPanel(plan.Kit.SetUps[0], new ShotSettings(Quarter, Length.FromMillimeters(225))).Should().BeApproximately(4 * 1580, 0.03 * 4 * 1580);
        (expected.OfCard(plan.Kit.SetUps[0], "rush 60 at 1:2", above, 0.18, new ShotSettings(Quarter, Length.FromCentimeters(20)))
            - expected.OfCard(plan.Kit.SetUps[0], "rush 60 at 1:2", above, 0.18, new ShotSettings(Quarter))).Value.Should().BeApproximately(2, 0.01);
    }

    [Fact]
    public void Outdoors_a_meter_in_the_beam_reads_less()
    {
        var plan = KitText.Plan(HandKit.Of(HandKit.White, panel: Size).Replace("outdoor-correction: 0 stops", "outdoor-correction: -1 stop", StringComparison.Ordinal));

        new ExpectedLight(plan).InBeam(Light(plan, LightRole.Above), new ShotSettings(Quarter, Length.FromCentimeters(50))).Should().BeApproximately(1280, 3);
    }

    // 72 mm × 48 mm about a flash that stands 60 mm to the left: the last of 25 cells to the right lies 60 + 0.48·48 = 83.0 mm away from it
    // in an upright frame, 60 + 0.48·72 = 94.6 mm in a lying one. At 20 cm that is a cosine of 0.9235 against 0.9041, cosⁿ⁺³ with n = 5.9: 0.274 stop.
    [Fact]
    public void An_upright_frame_reaches_less_far_aside()
    {
        var plan = HandKit.Plan(HandKit.White.Replace("distance: 45 cm", "distance: 20 cm, offset-right: -60 mm", StringComparison.Ordinal), panel: Size);
        var upright = new ExpectedLight(plan).OnSensor(plan.Kit.SetUps[0], "rush 60 at 1:2", Angle.FromDegrees(90), isUpright: true, new ShotSettings(Quarter))!;

        (upright.MarginsAt(25, 25)[12, 24] - Frame(plan, Quarter).MarginsAt(25, 25)[12, 24]).Should().BeApproximately(0.274, 0.02);
    }

    private static LightSpec Light(Plan plan, LightRole role) => plan.Kit.SetUps[0].Lights.Single(light => light.Role == role);

    private static ExpectedFrame Frame(Plan plan, FlashPower power, IsoSpeed? iso = null, FNumber? aperture = null) => new ExpectedLight(plan).OnSensor(
        plan.Kit.SetUps[0], "rush 60 at 1:2", Angle.FromDegrees(90), isUpright: false, new ShotSettings(power, Aperture: aperture, Iso: iso))!;
}
