using StudioKit.Planning.Checks;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A check fails where its limit is broken, and passes beside it.</summary>
public sealed class FailingCheckTests
{
    private const string Pack =
        """
        pack:
          bags: [{name: rucksack, inside: INSIDE, mass: 1.4 kg, highest-load: LOAD}]
          items: [{name: water, mass: 3 kg, count: 3, size: 200 mm x 100 mm x 100 mm}]

        """;

    // 12 kg in all: camera 0.7, lens 0.3, flashes 0.6, water 9, bag 1.4.
    [Theory]
    [InlineData("11.9 kg", false)]
    [InlineData("12.1 kg", true)]
    public void A_bag_takes_no_more_than_its_load(string load, bool passes) =>
        Passed(HandKit.Plan(Of("700 mm x 400 mm x 300 mm", load)), PlanCheckKind.BagMass).Should().Be(passes);

    // Camera 140 × 110 × 80, lens 100 × 80 × 80, two flashes 200 × 75 × 50 (usual sizes, common practice), water 3 · 200 × 100 × 100 mm: 9.372 l, which
    // with seven tenths of a bag filled by things of odd sizes asks for 13.4 l.
    [Theory]
    [InlineData("250 mm x 250 mm x 200 mm", false)]
    [InlineData("250 mm x 250 mm x 240 mm", true)]
    public void A_bag_holds_seven_tenths_of_its_volume(string inside, bool passes)
    {
        var plan = HandKit.Plan(Of(inside, "20 kg"));

        Passed(plan, PlanCheckKind.BagRoom).Should().Be(passes);
        plan.Pack.Bags.Single().VolumeShare.Should().BeApproximately(passes ? 9.372 / (0.7 * 15) : 9.372 / (0.7 * 12.5), 0.001);
    }

    // At 9° a flat sheet would have to reach H·cot(9° − 7.6°) = 28 mm · 41, more than a metre.
    [Fact]
    public void A_flat_panel_under_a_low_camera_fails() => Passed(
        HandKit.Plan(HandKit.White.Replace("camera-pitch: 90°", "camera-pitch: 9°", StringComparison.Ordinal)), PlanCheckKind.LowCameraAngles).Should().BeFalse();

    // No rail of a panel 400 mm wide comes from bars of 200 mm.
    [Theory]
    [InlineData("200 mm", false)]
    [InlineData("2 m", true)]
    public void Pieces_that_no_bar_is_long_enough_for_fail(string length, bool passes) => Passed(
        HandKit.Plan(HandKit.White + $"stock: {{lengths: [{{length: {length}}}]}}\n", panel: "width: 400 mm, depth: 400 mm"), PlanCheckKind.Stock).Should().Be(passes);

    // 4 stops over clipping are more than a GN of 32 gives through the sheet from 45 cm at f/24, and more than the veil allows.
    [Theory]
    [InlineData("4 stops", false)]
    [InlineData("1/3 stop", true)]
    public void Framings_that_cannot_be_exposed_fail(string target, bool passes) => Passed(
        HandKit.Plan(HandKit.White + $"    target-white-margin: {target}\n"), PlanCheckKind.Exposure).Should().Be(passes);

    // At life size the subject lies 2·f = 60 mm before the principal plane of a 30 mm lens; a barrel that holds the front glass farther out than that touches it.
    [Theory]
    [InlineData("20 mm", true)]
    [InlineData("150 mm", false)]
    public void A_lens_that_would_touch_its_subject_fails(string barrel, bool passes)
    {
        var plan = KitText.Plan(HandKit.Of(HandKit.White, lens: $"length: {barrel}")
            .Replace("focal-length: 60 mm", "focal-length: 30 mm", StringComparison.Ordinal).Replace("magnifications: [1:2]", "magnifications: [1:1]", StringComparison.Ordinal));

        (plan.Framings.Single().WorkingDistance.Meters > 0).Should().Be(passes);
        plan.Checks.Where(check => check.Kind == PlanCheckKind.RoomBeforeLens).Select(check => check.Passed).Should().Equal(passes ? [] : [false]);
    }

    // Couplings split what is too long, so a frame keeps within any length that a kit may ask for, down to 5 cm.
    [Theory]
    [InlineData(600)]
    [InlineData(200)]
    [InlineData(50)]
    public void Pipes_are_split_until_none_is_longer_than_asked_for(int longest)
    {
        var plan = HandKit.Plan(HandKit.White, panel: "width: 400 mm, depth: 400 mm", frame: FormattableString.Invariant($"longest-piece: {longest} mm"));

        plan.Frame!.Geometry.Members.Should().OnlyContain(member => member.CutLength.Millimeters <= longest + 0.05);
        Passed(plan, PlanCheckKind.LongestPiece).Should().BeTrue();
    }

    private static string Of(string inside, string load) => Pack.Replace("INSIDE", inside, StringComparison.Ordinal).Replace("LOAD", load, StringComparison.Ordinal);

    private static bool Passed(Plan plan, PlanCheckKind kind) => plan.Checks.Single(check => check.Kind == kind).Passed;
}
