using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Mending;

namespace StudioKit.Planning.Tests.Mending;

/// <summary>What is offered for sheets that stand behind subjects is planned again, and keeps what it promises.</summary>
public sealed class UprightMendsTests
{
    private static readonly string Pond = KitText.DemoText("pond-edge.yaml");

    [Fact]
    public void Where_the_camera_looks_lower_than_a_flat_panel_fills_an_upright_sheet_with_a_spare_flash_is_offered()
    {
        var text = Pond.Replace("    cover: bee tub\n", "", StringComparison.Ordinal).Replace("camera-pitch: [60°, 75°]", "camera-pitch: [2°, 75°]", StringComparison.Ordinal);

        var (check, mend) = Mended(text, check => check.Kind is PlanCheckKind.LowCameraAngles or PlanCheckKind.CameraAngles);

        mend.Changes.OfType<KitChange.BeforeSheet>().Should().ContainSingle().Which.Should().Match<KitChange.BeforeSheet>(change => change.SetUp == "bee under the tub" && change.Light.Flash == "rush light");
        CheckLikeness.PassesIn(check, mend.After).Should().BeTrue();
        mend.After.Kit.SetUps[0].Lights.Should().Contain(light => light.Role == LightRole.Behind);
        mend.After.Exposures.Where(exposure => exposure.SetUp == "bee under the tub").Should().OnlyContain(exposure => exposure.IsUsable);
    }

    [Theory]
    [InlineData("height-over-ground: 9 cm", "height-over-ground: 3 cm", PlanCheckKind.UprightGround)]
    [InlineData("camera-pitch: [0°, 3°]", "camera-pitch: [0°, 12°]", PlanCheckKind.UprightGround)]
    [InlineData("stake-hold: 3 kg", "over-ground: 5 cm\n    stake-hold: 3 kg", PlanCheckKind.UprightGround)]
    [InlineData("stake-hold: 3 kg", "width: 120 mm\n    stake-hold: 3 kg", PlanCheckKind.UprightSize)]
    [InlineData("stake-hold: 3 kg", "height: 100 mm\n    stake-hold: 3 kg", PlanCheckKind.UprightSize)]
    [InlineData("role: behind, distance: 35 cm", "role: behind, distance: 35 cm, offset-up: -10 cm", PlanCheckKind.FlashBehind)]
    public void An_upright_sheet_that_fails_is_offered_a_change_after_which_it_passes(string from, string to, PlanCheckKind kind)
    {
        var (check, mend) = Mended(Pond.Replace(from, to, StringComparison.Ordinal), check => check.Kind == kind);

        mend.After.Checks.Should().Contain(found => CheckLikeness.IsSame(check, found) && found.Passed);
    }

    [Theory]
    [InlineData("pond-edge.yaml", false)]
    [InlineData("fen-edge.yaml", true)]
    public void A_frame_that_sweeps_its_sheet_is_offered_only_where_no_other_sheet_is_clipped_to_its_back_rail(string kit, bool offered)
    {
        var low = new PlanCheck { Kind = PlanCheckKind.LowCameraAngles, Passed = false, SourceKey = "CommonPractice", SourceLocator = "" };

        var changes = MendCandidates.For(low, KitPlanner.Plan(KitText.Read(KitText.DemoText(kit)))).SelectMany(candidate => candidate);

        changes.OfType<KitChange.FrameShape>().Any().Should().Be(offered);
    }

    private static (PlanCheck Check, CheckMend Mend) Mended(string text, Func<PlanCheck, bool> which)
    {
        var read = KitText.Read(text);
        var session = new PlanSession();
        var plan = session.Plan(read);
        var check = plan.Checks.First(found => which(found) && !found.Passed);
        var mend = new CheckMender(plan, changes => session.Plan(read with { Kit = changes.Aggregate(read.Kit!, (KitSpec kit, KitChange change) => change.Apply(kit)) })).Of(check);
        mend.Should().NotBeNull();
        mend!.Breaks.Should().BeEmpty();
        return (check, mend);
    }
}
