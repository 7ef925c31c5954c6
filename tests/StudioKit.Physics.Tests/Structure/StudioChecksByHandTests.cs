using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Physics.Tests.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure;

/// <summary>Checks of the fen's studio worked out on paper: 600 × 400 mm, 500 mm high, 20 × 1.5 mm pipe, 3 mm of acrylic, 2.5 kg.</summary>
/// <remarks>
/// E = 2.9 GPa, I = 3754 mm⁴ (ASTM and EN pipe sizes by the ring's formula), so EI = 10.887 N·m². Legs stand 580 mm by 380 mm apart on feet of 20 mm.
/// </remarks>
public sealed class StudioChecksByHandTests
{
    private const double Gravity = 9.80665;
    private const double Stiffness = 10.887;

    private static readonly StudioCheckCase Fen = StudioCases.Fen with { Air = Temperature.FromDegreesCelsius(10), SunWarming = TemperatureDelta.Zero };

    /// <summary>
    /// Four legs of 480 mm without stretchers, K = 2: π²·10.887/0.96² = 116.6 N; with a joint of 50 N·m/rad that turns at 50/0.48 = 104.2 N both give way
    /// at 1/(1/116.6 + 1/104.2) = 55.0 N, of which a third is allowed. PVC keeps about 0.65 of its stiffness for weeks (from memory of creep curves).
    /// </summary>
    [Theory]
    [InlineData(true, (2.5 * Gravity / 4 / 0.65) + 30)]
    [InlineData(false, (2.5 * Gravity / 4) + 30)]
    public void A_leg_of_pvc_carries_its_standing_load_with_what_creep_leaves_and_an_elbow_with_all_its_stiffness(bool plastic, double newtons)
    {
        var check = Check(Fen with { Pipe = Fen.Pipe with { SoftensLikePvc = plastic } }, StructuralCheckKind.LegBuckling);

        check.Demand.As(UnitsNet.Units.ForceUnit.Newton).Should().BeApproximately(newtons, 1e-6);
        check.Capacity.As(UnitsNet.Units.ForceUnit.Newton).Should().BeApproximately(1 / ((Math.Pow(0.96 / Math.PI, 2) / Stiffness) + (0.48 / 50)) / 3, 0.05);
        check.Ratio.Should().BeApproximately(newtons / check.Capacity.As(UnitsNet.Units.ForceUnit.Newton), 1e-9);
    }

    /// <summary>
    /// Under its lowest stretcher a leg of 480 mm is a lever of twice the length, between stretchers and over the highest a column; the weaker of the two
    /// directions counts. π²·10.887 N·m² = 107.45 N·m², a third of it allowed.
    /// </summary>
    [Fact]
    public void Every_level_of_stretchers_divides_the_leg()
    {
        static FlashCradleCase At(double below) => new(Length.FromMillimeters(below), Length.Zero, Length.Zero, Length.FromMillimeters(60));
        double Capacity(params FlashCradleCase[] cradles) => Check(
            Fen with { Frame = PipeFrame.Generate(FrameCases.FenTable with { Cradles = cradles, Stretchers = FrameStretchers.Always }), JointStiffness = RotationalStiffness.FromNewtonMetersPerRadian(1e9) },
            StructuralCheckKind.LegBuckling).Capacity.As(UnitsNet.Units.ForceUnit.Newton);

        // Along at 240 mm, 220 mm over the foot: a lever of 440 mm. Across at 186 mm: 2·166 = 332 mm.
        Capacity(At(200)).Should().BeApproximately(107.45 / (0.440 * 0.440) / 3, 0.5);

        // A second one at 140 mm leaves 2·120 = 240 mm under it, 100 mm between, 260 mm over both. The one across, 54 mm under it at 86 mm, leaves 480 − 66 = 414 mm over it.
        Capacity(At(200), At(300)).Should().BeApproximately(107.45 / (0.414 * 0.414) / 3, 0.5);
    }

    /// <summary>Panel 1190·9.80665·0.003·0.24 = 8.402 N and subject 0.2·9.80665 = 1.961 N over 580 mm: (30·0.58/4 + 10.363·0.58/16)/(2·3754e-12/0.02) = 12.59 MPa.</summary>
    [Fact]
    public void A_rail_under_an_elbow_carries_panel_and_subject_too()
    {
        var check = Check(Fen, StructuralCheckKind.RailStress);

        check.Demand.As(UnitsNet.Units.PressureUnit.Megapascal).Should().BeApproximately(12.59, 0.02);
        check.Capacity.As(UnitsNet.Units.PressureUnit.Megapascal).Should().BeApproximately(51.4 / 2, 1e-9);
    }

    /// <summary>Stress grows in step with the force at the centre: what subject and elbow add to the panel's own is (0.2·9.80665 + 30)/(0.2·9.80665) of what the subject adds alone.</summary>
    [Fact]
    public void A_panel_under_an_elbow_carries_the_subject_too()
    {
        double Stress(StudioCheckCase studio, StructuralCheckKind kind) => Check(studio, kind).Demand.As(UnitsNet.Units.PressureUnit.Megapascal);
        var own = Stress(Fen with { Subject = Mass.Zero }, StructuralCheckKind.PanelStress);

        var share = (Stress(Fen, StructuralCheckKind.PanelStressUnderElbow) - own) / (Stress(Fen, StructuralCheckKind.PanelStress) - own);

        share.Should().BeApproximately(((0.2 * Gravity) + 30) / (0.2 * Gravity), 1e-6);
    }

    /// <summary>Weight over the arm to the nearer feet. The sheet's own centre of mass is summed up in 10,000 strips along the arc.</summary>
    [Theory]
    [InlineData(1000, 20)]
    [InlineData(1000, 45)]
    [InlineData(300, 90)]
    public void A_swept_table_tips_over_the_feet_nearer_to_its_centre_of_mass(double radius, double degrees)
    {
        var studio = Swept(radius, degrees, 2.5);
        var (front, back) = ArmsByHand(studio);

        (Math.Abs(front - back) > 0.01).Should().BeTrue("the arms must differ for the test to see a swap");
        HoldingOf(studio).Should().BeApproximately(2.5 * Gravity * Math.Min(front, back), 2.5 * Gravity * 1e-4);
    }

    [Fact]
    public void Either_feet_of_a_swept_table_can_be_the_nearer_ones()
    {
        // A heavy load counts under the flat panel's middle, so it draws the centre forward; without it the sheet draws it back.
        var (front, back) = ArmsByHand(Swept(1000, 45, 10));
        var (lightFront, lightBack) = ArmsByHand(Swept(300, 90, 1.5));

        (front < back).Should().BeTrue();
        (lightFront > lightBack).Should().BeTrue();
        HoldingOf(Swept(300, 90, 1.5)).Should().BeApproximately(1.5 * Gravity * lightBack, 1e-3);
        HoldingOf(Swept(1000, 45, 10)).Should().BeApproximately(10 * Gravity * front, 1e-2);
    }

    /// <summary>Two of four pegs stand to windward and hold with the whole base of 380 mm as arm; a cord at 45° from 500 mm up holds F·(0.38 + 0.5)/√2.</summary>
    [Theory]
    [InlineData(4, false, 2 * 60 * 0.38)]
    [InlineData(5, false, 2 * 60 * 0.38)]
    [InlineData(8, false, 4 * 60 * 0.38)]
    [InlineData(4, true, 2 * 60 * 0.88 / 1.41421356)]
    public void Only_the_pegs_to_windward_hold_the_frame_down(int pegs, bool guyed, double newtonMetres)
    {
        var pegged = Fen with { Pegs = pegs, PegHold = Force.FromNewtons(60), Guyed = guyed };

        (HoldingOf(pegged) - HoldingOf(Fen)).Should().BeApproximately(newtonMetres, 1e-5);
    }

    /// <summary>Sliding: friction 0.4 on 2.5 kg, and every peg, wherever it stands.</summary>
    [Fact]
    public void All_pegs_hold_against_sliding()
    {
        double Grip(StudioCheckCase studio) => Check(studio, StructuralCheckKind.Sliding).Capacity.As(UnitsNet.Units.ForceUnit.Newton);

        Grip(Fen).Should().BeApproximately(0.4 * 2.5 * Gravity, 1e-6);
        Grip(Fen with { Pegs = 4, PegHold = Force.FromNewtons(60) }).Should().BeApproximately((0.4 * 2.5 * Gravity) + 240, 1e-6);
    }

    /// <summary>Front view at 5.4 m/s, q = 17.86 Pa: rails and legs by length, diameter and height, the panel's edge; the side rails lie along the wind.</summary>
    [Fact]
    public void Wind_presses_on_pipes_across_it_and_on_edge_and_skirt()
    {
        var q = 1.225 * 5.4 * 5.4 / 2;
        var rails = 2 * 0.580 * 0.020 * 1.2 * 0.486;
        var legs = 4 * (0.486 - 0.020) * 0.020 * 1.2 * ((0.486 + 0.020) / 2);
        var edge = 0.600 * 0.003 * 1.28 * 0.500;
        var skirt = 0.600 * 0.500 * 1.28 * 0.250;

        var bare = Check(Fen, StructuralCheckKind.Tipping).Demand.As(UnitsNet.Units.TorqueUnit.NewtonMeter);
        var skirted = Check(Fen with { SkirtHeight = Length.FromMillimeters(500) }, StructuralCheckKind.Tipping).Demand.As(UnitsNet.Units.TorqueUnit.NewtonMeter);

        bare.Should().BeApproximately(1.5 * q * (rails + legs + edge), 1e-3);
        skirted.Should().BeApproximately(1.5 * q * (rails + legs + edge + skirt), 1e-3);
    }

    /// <summary>Acrylic outgrows PVC by (7.2 − 5.22)·10⁻⁵ a kelvin: half of 600 mm · 1.98·10⁻⁵ · ΔT at each edge.</summary>
    [Theory]
    [InlineData(25, 10, 20, 15)]
    [InlineData(30, 12, 5, 37)]
    [InlineData(5, 10, 20, 0)]
    public void A_sheet_grows_by_what_the_day_and_the_sun_are_warmer_than_the_bench(double air, double sun, double built, double warming)
    {
        var check = Check(
            Fen with { Air = Temperature.FromDegreesCelsius(air), SunWarming = TemperatureDelta.FromDegreesCelsius(sun), Built = Temperature.FromDegreesCelsius(built) },
            StructuralCheckKind.SheetGrowth);

        check.Demand.As(UnitsNet.Units.LengthUnit.Millimeter).Should().BeApproximately(600 * 1.98e-5 * warming / 2, 1e-9);
        check.Capacity.As(UnitsNet.Units.LengthUnit.Millimeter).Should().BeApproximately(2, 1e-9);
    }

    [Fact]
    public void Checks_of_the_rails_name_the_pieces_of_the_longest_rail()
    {
        var design = FrameCases.FenTable with { LongestPiece = Length.FromMillimeters(300) };
        var frame = PipeFrame.Generate(design);
        var rails = Check(Fen with { Frame = frame }, StructuralCheckKind.RailSag).Parts;

        rails.Should().HaveCount(2).And.OnlyContain(label => frame.Members.Single(member => member.Label == label).Role == FrameMemberRole.CrossRail);
        frame.Members.Where(member => rails.Contains(member.Label)).Sum(member => member.CentreLine.Millimeters).Should().BeApproximately(580, 1e-6);
    }

    private static StudioCheckCase Swept(double radius, double degrees, double kilograms)
    {
        var design = FrameCases.FenTable with
        {
            Shape = FrameShape.SweptTable,
            SweepRadius = Length.FromMillimeters(radius),
            SweepAngle = Angle.FromDegrees(degrees),
        };
        return Fen with { Frame = PipeFrame.Generate(design), SweepRadius = design.SweepRadius, StandingMass = Mass.FromKilograms(kilograms) };
    }

    // Everything but pipe and arc counts under the middle of the flat panel.
    private static (double Front, double Back) ArmsByHand(StudioCheckCase studio)
    {
        var places = studio.Frame.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
        var pipe = studio.Frame.Members.Sum(member => 0.12205 * member.CutLength.Meters * (places[member.From].Back + places[member.To].Back) / 2);
        var (radius, arc) = (studio.SweepRadius!.Value.Meters, studio.Frame.SheetLength.Meters - 0.400);
        const int Strips = 10_000;
        var sheet = Enumerable.Range(0, Strips).Sum(i => 1190 * 0.003 * 0.600 * (arc / Strips) * (0.200 + (radius * Math.Sin((i + 0.5) * arc / Strips / radius))));
        var centre = (pipe + sheet) / studio.StandingMass.Kilograms;
        var feet = studio.Frame.Feet.Select(foot => foot.Position.Back).ToList();
        return (centre - feet.Min(), feet.Max() - centre);
    }

    private static double HoldingOf(StudioCheckCase studio) =>
        Check(studio, StructuralCheckKind.Tipping).Capacity.As(UnitsNet.Units.TorqueUnit.NewtonMeter);

    private static StructuralCheck Check(StudioCheckCase studio, StructuralCheckKind kind) => StudioChecks.All(studio).Single(check => check.Kind == kind);
}
