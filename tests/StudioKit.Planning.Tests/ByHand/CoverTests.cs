using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light.Covers;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Covers;
using StudioKit.Planning.Session;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>What a cover takes of the light, and how long an animal stays in it, worked out on paper.</summary>
/// <remarks>The light above stands where it usually does: from the left, 45° high. Fresnel's formulae were evaluated apart, in sines and tangents.</remarks>
public sealed class CoverTests
{
    private const string Panel = "width: 400 mm, depth: 400 mm";

    private const string Tub = "covers: [{name: tub, shape: tub, inside: 120 mm x 120 mm x 40 mm MORE}]\n";

    private const string Tank = "covers: [{name: tank, shape: tank, inside: 200 mm x 200 mm x 80 mm, material: glass, water: 60 mm}]\n";

    private const string Frog = "subjects: [{name: frog, group: amphibians, length: 40 mm, height: 15 mm, wet: yes}]\n";

    // Straight down through acrylic: 0.9254 passes, 0.112 stop; the frame's corners look 14° aslant and lose 0.001 more.
    [Fact]
    public void The_flash_below_makes_up_for_one_wall() => StopsBetween(Open(), Covered(Tub, "tub"), LightRole.Below).Should().BeApproximately(0.112, 0.003);

    // Into the top at 45° from a light 40 cm off, 0.9097 passes, 0.1365 stop; and 0.112 on the way out.
    [Fact]
    public void The_flash_above_makes_up_for_two() => StopsBetween(Open(), Covered(Tub, "tub"), LightRole.Above).Should().BeApproximately(0.1365 + 0.112, 0.003);

    // Through water and the glass beneath: 0.97963 · 0.95348 passes straight up, 0.0984 stop; corners a little more.
    [Fact]
    public void The_flash_below_makes_up_for_a_tank_and_its_water() => StopsBetween(Open(), Covered(Tank, "tank"), LightRole.Below).Should().BeApproximately(0.0984, 0.003);

    // Into the water at 47.5°, refracted to 33.6°: 0.0446; out of it straight up 0.0297; and the light of what is in water spreads by n², 2·log₂ 1.333 = 0.829.
    [Fact]
    public void The_flash_above_makes_up_for_the_light_that_water_spreads() =>
        StopsBetween(Open(), Covered(Tank, "tank"), LightRole.Above).Should().BeApproximately(0.0446 + 0.0297 + 0.829, 0.004);

    [Fact]
    public void Cards_say_which_flash_loses_what_in_the_cover()
    {
        var lights = Covered(Tub, "tub").Exposures.Single().Lights;

        Lines(LightRole.Below).Should().Contain("Out of the cover").And.NotContain("Into the cover");
        Lines(LightRole.Above).Should().Contain("Out of the cover").And.Contain("Into the cover");

        IEnumerable<string> Lines(LightRole role) => lights.Single(light => light.Role == role).Budget.Lines.Select(line => line.Item);
    }

    // One wall is unsure by √((0.02·0.361)² + (log₂ 0.95)²) = 0.0744 stop at n = 1.49: of the sheet's light by the one that it leaves by, of the subject's by another as well.
    [Fact]
    public void A_cover_makes_its_exposures_less_sure()
    {
        const double Wall = 0.0744 * 0.0744;

        Square(Covered(Tub, "tub"), LightRole.Below).Should().BeApproximately(Square(Open(), LightRole.Below) + Wall, 1e-4);
        Square(Covered(Tub, "tub"), LightRole.Above).Should().BeApproximately(Square(Open(), LightRole.Above) + (2 * Wall), 1e-4);
        Square(Covered(Tank, "tank"), LightRole.Below).Should().BeApproximately(Square(Open(), LightRole.Below), 1e-9, "clean water is looked through");

        double Square(Plan plan, LightRole role) => Math.Pow(plan.Exposures.Single().Lights.Single(light => light.Role == role).Budget.Uncertainty.Value, 2);
    }

    [Fact]
    public void A_cover_that_is_lifted_takes_no_light()
    {
        var lifted = Covered(Tub.Replace(" MORE", ", lifted: yes", StringComparison.Ordinal), "tub");

        StopsBetween(Open(), lifted, LightRole.Below).Should().Be(0);
        StopsBetween(Open(), lifted, LightRole.Above).Should().Be(0);
        lifted.Covers.Single().Framings.Should().BeEmpty();
    }

    // A low wall throws the sheet before it to the lens: at 20° an acrylic pane 7.5 % of it, over 2 % of usual glare. A pane's share counts like any veil, so that
    // the margin at which a mid-tone is lifted by as much falls by log₂ of both over the glare alone.
    [Fact]
    public void A_wall_that_shows_the_sheet_before_it_leaves_less_room_before_the_picture_washes_out()
    {
        const string Low = "camera-pitch: 20°";
        const string Sheet = "width: 400 mm, depth: 900 mm";
        var open = HandKit.Plan(HandKit.White.Replace("camera-pitch: 90°", Low, StringComparison.Ordinal), panel: Sheet);
        var covered = HandKit.Plan(Tub.Replace(" MORE", "", StringComparison.Ordinal) + HandKit.White.Replace("camera-pitch: 90°", Low + "\n    cover: tub", StringComparison.Ordinal), panel: Sheet);

        (open.Exposures.Single().HighestMargin!.Value - covered.Exposures.Single().HighestMargin!.Value).Value
            .Should().BeApproximately(Math.Log2((0.02 + ClearWall.Reflectance(1.49, Math.PI / 9)) / 0.02), 1e-6);
    }

    // A wet ball of 40 mm in 0.576 litre: ln 2·V/(2π·d·D) is 63.5 s.
    [Fact]
    public void A_wet_animal_stays_only_until_it_fogs_its_tub()
    {
        var plan = Covered(Tub, "tub", Frog + "session: {settling: 90 s}\n");

        plan.Covers.Single().Stay.Should().Match<CoverStay>(stay => stay.Kind == CoverStayKind.Fog && Math.Abs(stay.Limit.Seconds - 63.5) < 0.1);
        plan.Session!.Subjects.Single().HoldLimit!.Value.Seconds.Should().BeApproximately(63.5, 0.1);
        plan.Session.Steps.Single(step => step.Kind == SessionStepKind.Settling).Time.Seconds.Should().BeApproximately(63.5, 0.1, "nobody waits longer than it may stay");
        plan.Checks.Single(check => check.Kind == PlanCheckKind.HoldTime).Passed.Should().BeFalse();
    }

    [Fact]
    public void The_shorter_of_hold_limit_and_stay_rules()
    {
        var moth = Frog.Replace(", wet: yes", ", hold-limit: 2 min", StringComparison.Ordinal);

        Limit(", time-limit: 1 min").Should().BeApproximately(60, 1e-9);
        Limit(", time-limit: 3 min").Should().BeApproximately(120, 1e-9);

        double Limit(string more) => Covered(Tub.Replace(" MORE", more, StringComparison.Ordinal), "tub", moth).Session!.Subjects.Single().HoldLimit!.Value.Seconds;
    }

    // A ball's wall turned half way between lamp and lens throws one to the other: 22.5° to the left of straight up, over a frog that lies there.
    [Fact]
    public void A_dome_shows_its_lamp_over_a_large_animal_and_beside_a_small_one()
    {
        const string Dome = "covers: [{name: dome, shape: dome, inside: 120 mm x 120 mm x 60 mm}]\n";

        Shown(40 * 1.6).Should().Match<CoveredView>(view => view.Faults.Contains(CoverFault.Reflection) && view.Shown.Single().Where.Right < 0);
        Shown(20).Should().Match<CoveredView>(view => !view.Faults.Contains(CoverFault.Reflection) && view.Shown.Count == 1);

        CoveredView Shown(double millimetres) => Covered(
            Dome, "dome", FormattableString.Invariant($"subjects: [{{name: frog, group: amphibians, length: {millimetres} mm, height: 4 mm}}]\n")).Covers.Single().Framings.Single().Views.Single();
    }

    // From the right it shows on the right.
    [Fact]
    public void A_light_that_is_turned_shows_elsewhere()
    {
        const string Dome = "covers: [{name: dome, shape: dome, inside: 120 mm x 120 mm x 60 mm}]\n";
        var plan = HandKit.Plan(Dome + White("dome").Replace("role: above, distance: 40 cm", "role: above, distance: 40 cm, azimuth: 90°, elevation: 45°", StringComparison.Ordinal), panel: Panel);

        plan.Covers.Single().Framings.Single().Views.Single().Shown.Single().Where.Right.Should().BePositive();
    }

    // Half as long again as it is long, half as high again as it is high.
    [Fact]
    public void An_animal_that_cannot_turn_does_not_fit()
    {
        Room(60).Passed.Should().BeTrue();
        Room(81).Should().Match<PlanCheck>(check => !check.Passed && check.Remedy!.Kind == CheckRemedyKind.LargerCover);

        PlanCheck Room(double millimetres) => Covered(Tub, "tub", FormattableString.Invariant($"subjects: [{{name: frog, group: amphibians, length: {millimetres} mm, height: 12 mm}}]\n"))
            .Checks.Single(check => check.Kind == PlanCheckKind.CoverRoom);
    }

    // Its foot of 124 mm needs 62 mm of flat sheet to every side of the subject.
    [Fact]
    public void A_foot_larger_than_the_sheet_fails_and_says_how_large_the_sheet_must_be()
    {
        var plan = HandKit.Plan(Tub.Replace(" MORE", "", StringComparison.Ordinal) + White("tub"), panel: "width: 110 mm, depth: 130 mm");
        var foot = plan.Checks.Single(check => check.Kind == PlanCheckKind.CoverFoot);

        foot.Passed.Should().BeFalse();
        foot.Remedy!.Amount.Should().BeOfType<CheckAmount.TwoSides>().Which.Width.Millimeters.Should().BeApproximately(124, 1e-6);
    }

    private static Plan Open() => HandKit.Plan(HandKit.White, panel: Panel);

    private static Plan Covered(string covers, string cover, string more = "") => HandKit.Plan(covers.Replace(" MORE", "", StringComparison.Ordinal) + more + White(cover), panel: Panel);

    private static string White(string cover) => HandKit.White.Replace("camera-pitch: 90°", $"camera-pitch: 90°\n    cover: {cover}", StringComparison.Ordinal);

    private static double StopsBetween(Plan open, Plan covered, LightRole role) => (ExactOf(covered, role) - ExactOf(open, role)).Value;

    private static StudioKit.Physics.Exposure.Stops ExactOf(Plan plan, LightRole role) => plan.Exposures.Single().Lights.Single(light => light.Role == role).ExactPower;
}
