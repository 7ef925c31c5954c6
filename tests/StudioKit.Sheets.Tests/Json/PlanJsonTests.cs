using System.Text.Json;
using StudioKit.Physics.Optics;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Planning.Checks;
using StudioKit.Sheets.Json;
using UnitsNet;

namespace StudioKit.Sheets.Tests.Json;

public sealed class PlanJsonTests
{
    private static readonly JsonElement Root = Read(PlanJson.Write(SamplePlan.Plan with { Frame = null }));

    [Fact]
    public void The_document_opens_with_the_kit_and_whether_its_plan_stands()
    {
        Root.GetProperty("kit").GetString().Should().Be("Fen edge kit");
        Root.GetProperty("contentHash").GetString().Should().Be("4f3a90c1");
        Root.GetProperty("stands").GetBoolean().Should().BeFalse("one of the sample's two checks fails");
    }

    // The numbers are those that the sample plan is written with.
    [Fact]
    public void Width_and_depth_of_the_panel_are_not_swapped()
    {
        var panel = Root.GetProperty("panel");

        new[] { "widthMm", "depthMm", "requiredWidthMm", "requiredDepthMm", "massG" }.Select(key => panel.GetProperty(key).GetDouble())
            .Should().Equal(320, 280, 302, 262, 320);
    }

    [Fact]
    public void Each_check_says_what_is_asked_and_what_is_given()
    {
        var check = Root.GetProperty("checks")[0];

        check.EnumerateObject().Select(property => property.Name).Should().Equal(
            "name", "kind", "parts", "passed", "demand", "capacity", "demandWidthMm", "demandDepthMm", "capacityWidthMm", "capacityDepthMm", "ratio", "source", "findings", "remedy", "caveats");
        new[] { "demandWidthMm", "demandDepthMm", "capacityWidthMm", "capacityDepthMm" }.Select(key => check.GetProperty(key).GetDouble()).Should().Equal(302, 262, 320, 280);
        check.GetProperty("kind").GetString().Should().Be("panel-size");
        check.GetProperty("demand").GetString().Should().Be("302 × 262 mm");
        check.GetProperty("capacity").GetString().Should().Be("320 × 280 mm");
        check.GetProperty("ratio").GetDouble().Should().Be(0.94);
    }

    [Fact]
    public void A_check_that_fails_gives_kinds_and_numbers_of_what_stands_in_the_way_and_of_what_to_do()
    {
        var refused = SamplePlan.Plan.Checks[0] with
        {
            Kind = PlanCheckKind.Cradle,
            Parts = ["sedge", "white"],
            Passed = false,
            Findings = [new CheckFinding.OfCradle(new CradleFault(CradleFaultKind.TooLow, Length.FromMillimeters(12.5)))],
            Remedy = new CheckRemedy(CheckRemedyKind.MoveFlash) { Amount = new CheckAmount.NearestMoves([new(CradleMoveKind.Up, Length.FromMillimeters(13))]), Keys = ["set-ups.lights.distance"] },
            Caveats =
            [
                new CheckCaveat.OfFrame(new FrameCaveat(FrameCaveatKind.SlopeBeyondFeet) { Size = Length.FromMillimeters(61), Against = Length.FromMillimeters(30) }),
                new CheckCaveat.OfStructure(new StructuralCaveat(StructuralCaveatKind.StressWhileBent) { Stress = Pressure.FromMegapascals(4.2) }),
            ],
        };
        var check = Read(PlanJson.Write(SamplePlan.Plan with { Frame = null, Checks = [refused] })).GetProperty("checks")[0];

        var finding = check.GetProperty("findings")[0];
        (finding.GetProperty("kind").GetString(), finding.GetProperty("byMm").GetDouble()).Should().Be(("too-low", 12.5));
        check.GetProperty("remedyKind").GetString().Should().Be("move-flash");
        check.GetProperty("remedyKeys")[0].GetString().Should().Be("set-ups.lights.distance");
        var move = check.GetProperty("remedyMoves")[0];
        (move.GetProperty("kind").GetString(), move.GetProperty("byMm").GetDouble()).Should().Be(("up", 13));
        var caveats = check.GetProperty("caveats");
        (caveats[0].GetProperty("kind").GetString(), caveats[0].GetProperty("sizeMm").GetDouble(), caveats[0].GetProperty("againstMm").GetDouble()).Should().Be(("slope-beyond-feet", 61, 30));
        caveats[1].GetProperty("stressPa").GetDouble().Should().Be(4.2e6);
    }

    [Fact]
    public void A_magnification_out_of_reach_comes_with_what_is_reached_and_the_tube_that_is_missing()
    {
        var missed = new PlanCheck
        {
            Kind = PlanCheckKind.Magnification,
            Parts = ["reed 50"],
            Passed = false,
            SourceKey = "Derived",
            SourceLocator = "optical stack",
            Demand = new CheckAmount.Enlargement(new Magnification(3)),
            Findings = [new CheckFinding.OutOfReach(new ReachLimit(ReachLimitKind.TooLarge, new Magnification(3), new Magnification(1.736), Length.FromMillimeters(137.5)))],
        };

        var finding = Read(PlanJson.Write(SamplePlan.Plan with { Frame = null, Checks = [missed] })).GetProperty("checks")[0].GetProperty("findings")[0];

        finding.GetProperty("kind").GetString().Should().Be("too-large");
        (finding.GetProperty("wanted").GetDouble(), finding.GetProperty("nearest").GetDouble()).Should().Be((3, 1.736));
        finding.GetProperty("leastExtensionMm").GetDouble().Should().Be(137.5);
    }

    [Fact]
    public void Settings_stand_as_marked_and_as_exact_numbers()
    {
        var exposure = Root.GetProperty("exposures")[0];

        exposure.GetProperty("aperture").GetString().Should().Be("f/16");
        exposure.GetProperty("shutter").GetString().Should().Be("1/125 s");
        exposure.GetProperty("shutterS").GetDouble().Should().Be(1.0 / 128);
        exposure.GetProperty("isoSpeed").GetDouble().Should().Be(500);
        exposure.GetProperty("bracketStops").EnumerateArray().Select(step => step.GetDouble()).Should().Equal(0.3333333, -0.3333333);
    }

    [Fact]
    public void A_comparison_counts_what_each_plan_fails_and_what_works()
    {
        var whole = SamplePlan.Plan;
        var root = Read(ComparisonJson.Write(new PlanComparison(whole, whole with { Checks = [], Exposures = [whole.Exposures[0]] })));

        root.GetProperty("first").GetProperty("checksFailed").GetInt32().Should().Be(1);
        root.GetProperty("second").GetProperty("checksFailed").GetInt32().Should().Be(0);
        root.GetProperty("second").GetProperty("exposuresThatWork").GetInt32().Should().Be(1);
        root.GetProperty("massDifferenceG").GetDouble().Should().Be(0);
    }

    private static JsonElement Read(string json) => JsonDocument.Parse(json).RootElement;
}
