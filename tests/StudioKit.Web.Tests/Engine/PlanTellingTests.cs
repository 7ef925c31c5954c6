using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Engine;

/// <summary>What the page is told against the plan that the core makes of the same text.</summary>
public sealed class PlanTellingTests
{
    private static readonly Lazy<(PlanAnswer Told, Plan Plan)> Fen = new(() =>
    {
        var text = Asked.Demo();
        return (new Asked().Plan(text), KitPlanner.Plan(KitReader.Parse(text, "kit.yaml", PartsLibrary.Embedded)));
    });

    [Fact]
    public void A_sound_kit_stands_and_says_so()
    {
        Fen.Value.Told.Verdict.Standing.Should().Be(Standing.Stands);
        Fen.Value.Told.Hash.Should().Be(Fen.Value.Plan.ContentHash);
        Fen.Value.Told.Checks.Should().HaveCount(Fen.Value.Plan.Checks.Count).And.OnlyContain(check => check.Passed);
    }

    [Fact]
    public void A_panel_too_small_fails_with_what_is_asked_given_and_the_remedy()
    {
        var told = new Asked().Plan(Asked.Demo().Replace("width: 600 mm", "width: 200 mm", StringComparison.Ordinal));

        told.Verdict.Standing.Should().Be(Standing.Fails);
        told.Verdict.FirstFailing.Should().StartWith("Panel size: ").And.Contain("asked").And.Contain("200").And.MatchRegex(@"[^.]\.$");
        told.Verdict.Remedy.Should().StartWith("Cut the panel to ");
    }

    [Fact]
    public void A_text_that_cannot_be_read_is_told_by_line_and_column()
    {
        var told = new Asked().Plan("kit: Bog\ncamera:\n  sensor: 36 mm\n");

        told.Verdict.Standing.Should().Be(Standing.Unread);
        told.Verdict.FirstFailing.Should().MatchRegex(@"[^.]\.$", "it is one sentence");
        told.Faults.Should().Contain(fault => fault.Line == 3 && fault.IsError);
        told.Checks.Should().BeEmpty();
    }

    // The subject's foot stands midway; a flash without an offset lies under the middle of the flat panel: 600 mm × 400 mm in the kit.
    [Fact]
    public void The_picture_is_to_scale()
    {
        var studio = Fen.Value.Told.Studios.Should().ContainSingle().Subject;

        (studio.PanelWidth, studio.PanelDepth, studio.PanelHeight).Should().Be((600, 400, 500));
        studio.SidePanel.Should().OnlyContain(spot => spot.Y == 500);
        studio.Subject.Y.Should().Be(500, "it stands on the panel");
        var light = studio.Lights.Should().ContainSingle().Subject;
        (light.Flash, light.Key, light.Distance).Should().Be(("sedge", "set-ups[0].lights[0]", 450));
        light.Centre.Should().Be(new Spot(300, 200));
        studio.Framings.Where(framing => framing.Map is not null).Should().ContainSingle("the first view shows one map").Which
            .Should().Match<SeenFraming>(hardest => hardest.Map!.Margins.Count == studio.Columns * studio.Rows && hardest.Darkest.Stops == studio.Framings.Min(framing => framing.Darkest.Stops));
    }

    // By hand: 40 cm off, 30° up: 346.4 mm along the ground and 200 mm up; from the camera it stands before the subject, from behind beyond it, from the side at its own place.
    [Theory]
    [InlineData("0°", -346.4, 200)]
    [InlineData("180°", 346.4, 200)]
    [InlineData("-90°", 0, 200)]
    public void A_flash_above_stands_in_the_side_view_where_the_kit_says(string azimuth, double away, double up)
    {
        var line = Asked.Demo().Split('\n').First(text => text.Contains("role: above", StringComparison.Ordinal));
        var text = Asked.Demo().Replace(line, $"      - {{flash: willow, role: above, modifier: small softbox, distance: 40 cm, azimuth: {azimuth}, elevation: 30°}}", StringComparison.Ordinal);

        var studio = new Asked().Plan(text).Studios[0];

        var light = studio.UpperLights.Should().ContainSingle().Subject;
        light.At.X.Should().BeApproximately(studio.Subject.X + away, 0.11);
        light.At.Y.Should().BeApproximately(studio.Subject.Y + up, 0.11);
        (light.Way.X * 400).Should().BeApproximately(away, 0.1);
        (light.Way.Y * 400).Should().BeApproximately(up, 0.1);
    }

    [Fact]
    public void The_map_has_its_darkest_visible_point_where_the_plan_has_it()
    {
        var framing = Fen.Value.Told.Studios[0].Framings[0];
        var planned = Fen.Value.Plan.PanelLights[0].Framings[0];

        framing.Darkest.Stops.Should().BeApproximately(planned.Darkest.Margin.Value, 0.001);
        framing.Darkest.Place.X.Should().BeApproximately(planned.Darkest.Place.Across.Millimeters + 300, 0.1);
        framing.Darkest.Place.Y.Should().BeApproximately(planned.Darkest.Place.AlongSheet.Millimeters, 0.1);
    }

    [Fact]
    public void Every_card_says_what_its_exposure_says()
    {
        var (told, plan) = Fen.Value;

        told.Cards.Select(card => (card.SetUp, card.Framing, card.Aperture, card.Shutter, card.Iso))
            .Should().Equal(plan.Exposures.Select(exposure => (exposure.SetUp, exposure.Framing.Name, exposure.Aperture.Nominal, exposure.Shutter.Nominal, exposure.Iso.Nominal)));
        told.Cards[0].Lights.Select(light => light.Power).Should().Equal(plan.Exposures[0].Lights.Select(light => light.PowerText));
    }

    [Fact]
    public void The_carried_mass_is_the_packs()
    {
        Fen.Value.Told.Measures.Single(measure => measure.Name == "carried").Value.Should().Be(MeasureFormat.Mass(Fen.Value.Plan.Pack.Total));
    }

    [Fact]
    public void Each_stage_is_reported_as_it_begins()
    {
        var asked = new Asked();

        asked.Plan(Asked.Demo());

        asked.Steps.Take(3).Should().Equal("lenses", "panel", "frame");
    }
}
