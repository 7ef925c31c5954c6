using StudioKit.Kits;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Tests.Frames;

/// <summary>What a kit says of joints, elbows, ground and sun counts in the checks.</summary>
/// <remarks>Table of 600 × 400 mm, 500 mm high, 20 × 1.5 mm pipe, air of 25 °C; EI = 10.887 N·m², section modulus 375.4 mm³.</remarks>
public sealed class StudioCheckInputsTests
{
    private const string Yaml = """
        kit: Reed margin
        camera: {name: body R, sensor: 36 mm x 24 mm}
        lenses: [{name: reed 50, focal-length: 50 mm, magnifications: [1:2]}]
        flashes: [{name: sedge, guide-number: "30 m @ ISO 100", mass: 300 g}]
        panel: {width: 600 mm, depth: 400 mm, thickness: 3 mm, skirts: noPANEL}
        frame: {height: 500 mm, stretchers: never, pipe: {part: pvc-u-20x1.5}, fittings: pvc-u-20FRAME}
        site: {temperature: 25 °C, slope: 5°SITE}
        set-ups: [{name: white, kind: white-background, lights: [{flash: sedge, role: below, distance: 430 mm}]}]

        """;

    /// <summary>Twice the friction holds twice the push.</summary>
    [Fact]
    public void Friction_of_the_ground_holds_the_feet() =>
        (Check(StructuralCheckKind.Sliding, site: "ground-friction: 0.8").Ratio / Check(StructuralCheckKind.Sliding).Ratio).Should().BeApproximately(0.5, 1e-9);

    /// <summary>30 N more in the middle of 580 mm: 30·0.58/4 N·m over 375.4 mm³ is 11.59 MPa.</summary>
    [Fact]
    public void An_elbow_of_the_kits_own_weight_leans_on_the_rail() =>
        (Megapascals(Check(StructuralCheckKind.RailStress, panel: "elbow-load: 60 N")) - Megapascals(Check(StructuralCheckKind.RailStress))).Should().BeApproximately(11.59, 0.02);

    /// <summary>WMO/TD-No. 1555, table 1.1, in-land: three-second gust over ten-minute mean 1.66; pressure goes with its square, 2.756.</summary>
    [Fact]
    public void A_mean_wind_presses_with_its_gust() =>
        (Check(StructuralCheckKind.Tipping).Ratio / Check(StructuralCheckKind.Tipping, site: "gust-factor: 1").Ratio).Should().BeApproximately(2.756, 0.001);

    /// <summary>Three tens more than a leg is checked for: 70 N more on it, whatever else it bears.</summary>
    [Fact]
    public void A_heavy_elbow_buckles_the_legs()
    {
        var (light, heavy) = (Check(StructuralCheckKind.LegBuckling, site: "sun-warming: 0 K"), Check(StructuralCheckKind.LegBuckling, panel: "elbow-load: 100 N", site: "sun-warming: 0 K"));

        (heavy.Demand.As(UnitsNet.Units.ForceUnit.Newton) - light.Demand.As(UnitsNet.Units.ForceUnit.Newton)).Should().BeApproximately(70, 1e-6);
        heavy.Holds.Should().BeFalse();
        heavy.Loads.Should().Contain(new StructuralLoad(StructuralLoadKind.Elbow, Force.FromNewtons(100)));
    }

    /// <summary>200 g more over the rail: 0.2·9.80665·0.58/16 N·m over 375.4 mm³ is 0.189 MPa.</summary>
    [Fact]
    public void A_heavier_box_rests_on_the_rail() =>
        (Megapascals(Check(StructuralCheckKind.RailStress, panel: "subject-in-box: 400 g")) - Megapascals(Check(StructuralCheckKind.RailStress))).Should().BeApproximately(0.189, 0.001);

    /// <summary>Built at 20 °C: growth goes with 25 + 10 − 20 = 15 K, or with 25 K where the sun warms by 20 K.</summary>
    [Fact]
    public void Sun_warms_the_sheet_by_what_the_kit_says() =>
        (Check(StructuralCheckKind.SheetGrowth, site: "sun-warming: 20 K").Ratio / Check(StructuralCheckKind.SheetGrowth).Ratio).Should().BeApproximately(25.0 / 15, 1e-6);

    [Fact]
    public void A_sheet_bears_for_a_moment_what_the_kit_says() =>
        Check(StructuralCheckKind.PanelStressUnderElbow, panel: "short-term-stress: 20 MPa").Capacity.As(UnitsNet.Units.PressureUnit.Megapascal).Should().BeApproximately(20, 1e-9);

    /// <summary>Cast sheet of 3 mm may be 2.3 mm thin, extruded 2.85 mm (ISO 7823): it then sags the less.</summary>
    [Fact]
    public void How_a_sheet_was_made_says_how_thin_it_may_be()
    {
        FrameLoads.SheetOf(Kit(panel: "making: extruded").Panel).Making.Should().Be(SheetMaking.Extruded);
        Check(StructuralCheckKind.PanelSag, panel: "making: extruded").Caveats.Should().NotBeEquivalentTo(Check(StructuralCheckKind.PanelSag).Caveats);
    }

    /// <summary>Lean F·(h²/(4·kθ) + h³/(4·3EI)) with h = 0.5 m less the foot: stiffer joints take their part of it.</summary>
    [Fact]
    public void Stiffer_joints_lean_less()
    {
        var (loose, stiff) = (Check(StructuralCheckKind.Sway), Check(StructuralCheckKind.Sway, frame: "joint-stiffness: 200 N·m/rad"));
        var foot = Plan(Kit()).Geometry.Feet[0].LevelExtension.Meters;
        var bent = (0.5 - foot) / (3 * 10.887 * PvcTemperature.ModulusFactor(35));

        (stiff.Ratio / loose.Ratio).Should().BeApproximately(((1.0 / 200) + bent) / ((1.0 / 50) + bent), 0.001);
        Check(StructuralCheckKind.LegBuckling, frame: "joint-stiffness: 200 N·m/rad").Ratio.Should().BeLessThan(Check(StructuralCheckKind.LegBuckling).Ratio);
    }

    /// <summary>A nudge of 10 N on four legs of 236 mm: 10·0.236²/(4·50) is 2.8 mm, over a hundredth of the height; joints a hundred times stiffer leave the 1 mm that the legs bend.</summary>
    [Theory]
    [InlineData("50 N·m/rad", true)]
    [InlineData("5000 N·m/rad", false)]
    public void Stretchers_are_put_in_where_the_kits_joints_lean_too_far(string stiffness, bool stretched)
    {
        var yaml = Yaml.Replace("height: 500 mm, stretchers: never", $"height: 300 mm, joint-stiffness: {stiffness}", StringComparison.Ordinal)
            .Replace("430 mm", "240 mm", StringComparison.Ordinal).Replace("PANEL", "", StringComparison.Ordinal).Replace("FRAME", "", StringComparison.Ordinal).Replace("SITE", "", StringComparison.Ordinal);

        Plan(KitText.Read(yaml).Kit!).Geometry.Members.Any(member => member.Role == Physics.Structure.Frames.FrameMemberRole.Stretcher).Should().Be(stretched);
    }

    /// <summary>Ground of 5° under legs 580 × 380 mm apart asks for tan 5°·693 mm = 61 mm.</summary>
    [Fact]
    public void A_foot_turns_no_further_than_its_screw()
    {
        var feet = Plan(Kit(frame: "foot-travel: 30 mm"));

        feet.Geometry.Feet.Should().OnlyContain(foot => Math.Abs((foot.LongestExtension - foot.ShortestExtension).Millimeters - 30) < 1e-6);
        var caveat = feet.Geometry.Caveats.Single(caveat => caveat.Kind == FrameCaveatKind.SlopeBeyondFeet);
        caveat.Size!.Value.Millimeters.Should().BeApproximately(61, 0.5);
        caveat.Against!.Value.Millimeters.Should().Be(30);
        Plan(Kit()).Geometry.Caveats.Should().NotContain(caveat => caveat.Kind == FrameCaveatKind.SlopeBeyondFeet);
    }

    private static StructuralCheck Check(StructuralCheckKind kind, string panel = "", string frame = "", string site = "")
    {
        var kit = Kit(panel, frame, site);
        var planned = Plan(kit);
        return StudioChecks.All(FrameLoads.CaseOf(kit, Panel, planned.Geometry, planned.StandingMass)).Single(check => check.Kind == kind);
    }

    private static double Megapascals(StructuralCheck check) => check.Demand.As(UnitsNet.Units.PressureUnit.Megapascal);

    private static FramePlan Plan(KitSpec kit) => FramePlanner.Plan(kit, Panel, new PlanningServices());

    private static KitSpec Kit(string panel = "", string frame = "", string site = "") => KitText.Read(Yaml
        .Replace("PANEL", More(panel), StringComparison.Ordinal)
        .Replace("FRAME", More(frame), StringComparison.Ordinal)
        .Replace("SITE", More(site), StringComparison.Ordinal)).Kit!;

    private static string More(string key) => key.Length == 0 ? "" : $", {key}";

    private static PanelPlan Panel { get; } = new()
    {
        RequiredWidth = Length.FromMillimeters(600),
        RequiredDepth = Length.FromMillimeters(400),
        Width = Length.FromMillimeters(600),
        Depth = Length.FromMillimeters(400),
        SizeGiven = true,
        SubjectFromFront = Length.FromMillimeters(200),
        Material = "white acrylic",
        Thickness = Length.FromMillimeters(3),
        Mass = Mass.FromGrams(857),
        MassOrigin = Physics.Packing.MassOrigin.FromGeometry,
    };
}
