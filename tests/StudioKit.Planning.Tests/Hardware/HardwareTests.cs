using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Cutting.Tables;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Assembling;
using StudioKit.Planning.Studio.Hardware;
using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Planning.Tests.Hardware;

/// <summary>Whatever a step or drawing names is on the list of parts, in its count: counted once more from steps, joints and pieces.</summary>
public sealed class HardwareTests
{
    [Fact]
    public void All_that_the_steps_of_any_frame_name_is_bought_in_its_count() => FrameKits.Any.Sample(
        kit =>
        {
            if (FrameKits.FrameOf(kit) is { } frame)
            {
                Holds(frame);
            }
        },
        iter: FrameKits.Count);

    [Fact]
    public void All_that_the_steps_of_the_demo_kits_name_is_bought_in_its_count()
    {
        foreach (var frame in FrameKits.Demos)
        {
            Holds(frame);
        }
    }

    /// <summary>Cap's floor to ground at its longest, 15 mm in the nuts as the step says, and the nut in the cap (ISO 4032: 6.8 mm at M8, 5.2 mm at M6, 4.7 mm at M5), summed by hand.</summary>
    [Fact]
    public void A_foots_screw_reaches_the_longest_setting_with_its_nuts_full() => FrameKits.Any.Where(kit => kit.Frame.Kind != Kits.Studio.FrameKind.LowGround).Sample(
        kit =>
        {
            if (FrameKits.FrameOf(kit) is { Geometry.Feet.Count: > 0 } frame)
            {
                var foot = Line(frame, HardwareKind.Foot);
                var nut = foot.Diameter!.Value.Millimeters switch { > 7 => 6.8, > 5.5 => 5.2, _ => 4.7 };
                var longest = frame.Assembly.OfType<AssemblyStep.FitFeet>().Single().Longest.Millimeters;
                foot.Length!.Value.Millimeters.Should().BeGreaterThanOrEqualTo(longest + 15 + nut - 1e-6).And.BeLessThan(longest + 15 + nut + 20.1, "no longer than the next that is sold");
            }
        },
        iter: FrameKits.Count);

    /// <summary>Tall kit, by hand: four corners of three pipes; four caps, slope of 3°, longest 61 mm: 61 + 15 + 6.8 = 82.8, sold 90; eight pegs with cords from 751 mm up: 0.75·√2 + 0.4 m, 1.46 m each, 11.7 m in all; a pipe of 20 mm in fittings 4 mm proud: 28 + 10 = 38, sold 40 mm.</summary>
    [Fact]
    public void The_tall_stand_is_bought_as_counted_by_hand()
    {
        var frame = KitText.Demo("tall-stand.yaml").Frame!;
        var lines = frame.Shopping.ToDictionary(line => line.Item, line => line.Count, StringComparer.Ordinal);

        lines["pin, 4 mm thick, 40 mm long, with a ring and 20 cm of thin cord"].Should().Be(12);
        lines["foot: hexagon screw M8 × 90 mm threaded to its head, two nuts M8, washer of 16 mm, rubber tip for a head 13 mm wide"].Should().Be(4);
        lines["bright cord, 3 mm thick, in pieces of 146 cm: 8, metre"].Should().Be(12);
        lines["drill bit, 9 mm"].Should().Be(1);
        lines["drill bit, 4.5 mm"].Should().Be(1);
        lines["spring balance that shows 5.44 kg"].Should().Be(1, "12 lb is 5.44 kg");
        frame.FootHole!.Value.Millimeters.Should().Be(9, "ISO 273, medium, M8");
    }

    /// <summary>Pipe of 16 mm with a wall of 1.5 mm has a bore of 13 mm: a nut M8 is 15 mm across its corners, one M6 11.5 mm.</summary>
    [Fact]
    public void A_thin_pipe_takes_a_thinner_foot()
    {
        var foot = Line(KitText.Demo("heath-ultralight.yaml").Frame!, HardwareKind.Foot);

        foot.Screw!.Thread.Should().Be(Physics.Structure.Fasteners.MetricThread.M6);
        foot.Hole!.Value.Millimeters.Should().Be(6.5);
    }

    [Theory]
    [InlineData("tall-stand.yaml")]
    [InlineData("fen-edge.yaml")]
    [InlineData("pond-edge.yaml")]
    [InlineData("heath-ultralight.yaml")]
    public void What_travels_is_on_the_pack_list_in_its_count(string kit)
    {
        var plan = KitText.Demo(kit);

        foreach (var line in plan.Workshop!.Hardware.Where(line => line.Travels))
        {
            plan.Pack.Items.Should().Contain(item => item.Name == HardwareText.Brief(line) && item.Mass > Mass.Zero)
                .Which.Count.Should().Be(line.Kind == HardwareKind.WipingCloth ? 1 : line.Count, line.Kind.ToString());
        }

        foreach (var tool in plan.Workshop.Tools.Where(tool => tool.Kind is ToolKind.Level or ToolKind.SpringBalance or ToolKind.Spanner))
        {
            plan.Pack.Items.Should().Contain(item => item.Name == ToolText.Name(tool));
        }
    }

    /// <summary>A kit of parts that all have a price has a sum, whatever glue and rags it takes from the house.</summary>
    [Fact]
    public void Things_from_the_house_and_tools_cost_nothing()
    {
        KitText.Demo("heath-ultralight.yaml").Workshop!.TotalCost.Should().Be(23.6m, "pipe 1.10, corners 2.80, caps 1, pins 2.40, feet 3.20, pad 0.80, clips 1.20, pegs 1.60, sheet 9.50");
    }

    private static void Holds(FramePlan frame)
    {
        var bought = Counts(frame);
        var ends = frame.Geometry.Members.SelectMany(member => new[] { member.From, member.To });
        var pinned = frame.Geometry.Joints.Where(joint => joint.Pinned).Select(joint => joint.Label).ToHashSet(StringComparer.Ordinal);
        Expect(bought, HardwareKind.Pin, ends.Count(pinned.Contains), frame);
        Expect(bought, HardwareKind.Foot, frame.Geometry.Joints.Count(joint => joint.Kind == FittingKind.Cap), frame);
        foreach (var step in frame.Assembly)
        {
            Named(step, frame, bought);
        }

        var flashes = frame.Assembly.OfType<AssemblyStep.PutFlash>().Select(put => put.Flash).ToList();
        Expect(bought, HardwareKind.CradleClamp, flashes.Where(flash => flash.CradleJoint is not null).Select(flash => flash.Flash).Distinct().Count(), frame);
        Expect(bought, HardwareKind.LowStand, flashes.Where(flash => flash.Support == FlashSupport.OwnStand).Select(flash => flash.Flash).Distinct().Count(), frame);
        foreach (var holder in frame.BuiltHolders)
        {
            For(frame, holder.Holder, HardwareKind.PipeClip).Should().Be(holder.OnPeg ? 0 : 2);
            For(frame, holder.Holder, HardwareKind.PolePeg).Should().Be(holder.OnPeg ? 1 : 0);
            For(frame, holder.Holder, HardwareKind.FlashJoint).Should().Be(1);
            For(frame, holder.Holder, HardwareKind.SafetyCord).Should().Be(1);
        }

        foreach (var upright in frame.Workshop.Uprights)
        {
            Named(upright, frame);
        }

        foreach (var hole in frame.Workshop.Hardware.Select(line => line.Hole).OfType<Length>())
        {
            frame.Workshop.Tools.Should().Contain(tool => tool.Kind == ToolKind.DrillBit && tool.Size!.Value.Millimeters.Equals(hole.Millimeters));
        }

        InTheTable(frame);
    }

    // A step that is new makes this fail, until somebody has thought of what it takes.
    private static void Named(AssemblyStep step, FramePlan frame, Dictionary<HardwareKind, int> bought)
    {
        switch (step)
        {
            case AssemblyStep.MarkPieces or AssemblyStep.BuildLegs or AssemblyStep.JoinSide or AssemblyStep.PushAcross or AssemblyStep.CloseFrame or AssemblyStep.TestFlash or AssemblyStep.PutFlash:
                break;
            case AssemblyStep.FitFeet feet:
                Expect(bought, HardwareKind.Foot, feet.Joints.Count, frame);
                Expect(bought, HardwareKind.NutGlue, feet.Joints.Count, frame);
                break;
            case AssemblyStep.PinJoints pins:
                Line(frame, HardwareKind.Pin).Places.Select(place => place.Where).Should().BeEquivalentTo(pins.At);
                frame.Workshop.Tools.Should().Contain(tool => tool.Kind == ToolKind.DrillBit && tool.Size!.Value.Equals(pins.Hole.Width, UnitsNet.Length.FromMicrometers(1))).And.Contain(tool => tool.Kind == ToolKind.Drill).And.Contain(tool => tool.Kind == ToolKind.File);
                break;
            case AssemblyStep.SetOnFeet:
                frame.Workshop.Tools.Should().Contain(tool => tool.Kind == ToolKind.Level).And.Contain(tool => tool.Kind == ToolKind.Spanner);
                break;
            case AssemblyStep.HangBallast ballast:
                Line(frame, HardwareKind.BallastBag).Holds!.Value.Kilograms.Should().BeApproximately(ballast.Mass.Kilograms, 1e-9);
                Expect(bought, HardwareKind.BallastCord, 4, frame);
                break;
            case AssemblyStep.DrivePegs pegs:
                Expect(bought, HardwareKind.Peg, pegs.Count, frame);
                Expect(bought, HardwareKind.GuyCord, pegs.Corners.Count > 0 ? pegs.Count : 0, frame);
                Expect(bought, HardwareKind.CordRag, pegs.Corners.Count > 0 ? pegs.Count : 0, frame);
                frame.Workshop.Tools.Should().Contain(tool => tool.Kind == ToolKind.SpringBalance).Which.Load!.Value.Kilograms.Should().BeGreaterThanOrEqualTo(pegs.Hold.Kilograms - 1e-9);
                Reaches(pegs, frame);
                break;
            case AssemblyStep.LayStrips strips:
                var kind = strips.Ledge.Seat == PanelSeat.OverRails ? HardwareKind.PadStrip : HardwareKind.LedgeStrip;
                Line(frame, kind).Whole.Meters.Should().BeApproximately(strips.Ledge.Rests.Sum(rest => rest.Length.Meters), 1e-9);
                (bought.GetValueOrDefault(HardwareKind.LedgeScrew) >= 2 * strips.Ledge.Rests.Count).Should().Be(kind == HardwareKind.LedgeStrip);
                break;
            case AssemblyStep.LayPanel panel:
                Expect(bought, HardwareKind.PanelClip, panel.Ledge.ClipPoints.Count, frame);
                Expect(bought, HardwareKind.PanelCloth, 2, frame);
                Expect(bought, HardwareKind.WipingCloth, 1, frame);
                break;
            case AssemblyStep.HangSkirts:
                bought[HardwareKind.SkirtClip].Should().BeGreaterThanOrEqualTo((int)Math.Ceiling(frame.SheetParts.Where(part => part.Kind == SheetPartKind.Skirt).Sum(part => part.Count * part.Width.Meters) / 0.3));
                frame.Workshop.Tools.Should().Contain(tool => tool.Kind == ToolKind.Needle);
                break;
            case AssemblyStep.FoldSoftbox fold:
                For(frame, fold.Box.Modifier, HardwareKind.HeadBand).Should().Be(1);
                Line(frame, HardwareKind.FlapTape).Places.Should().Contain(place => place.Where == fold.Box.Modifier);
                break;
            default:
                throw new InvalidOperationException($"What does {step.GetType().Name} take?");
        }
    }

    // A cord that leads down at 45° from a corner is √2 times as long as the corner is high, and has 40 cm for its knots.
    private static void Reaches(AssemblyStep.DrivePegs pegs, FramePlan frame)
    {
        if (pegs.Corners.Count == 0)
        {
            return;
        }

        var places = frame.Workshop.Hardware.Single(line => line is { Kind: HardwareKind.GuyCord, For: null }).Places;
        places.Select(place => place.Where).Should().BeSubsetOf(pegs.Corners.SelectMany(corner => corner.Parts));
        foreach (var place in places)
        {
            var height = pegs.Corners.Single(corner => corner.Parts.Contains(place.Where)).Height.Meters;
            place.Length!.Value.Meters.Should().BeApproximately((height * Math.Sqrt(2)) + 0.4, 1e-6);
        }
    }

    private static void Named(UprightStandPlan upright, FramePlan frame)
    {
        foreach (var step in upright.Assembly)
        {
            switch (step)
            {
                case UprightStep.HangSheet:
                    For(frame, upright.Name, HardwareKind.SheetClip).Should().Be(2 * (upright.ClipsPerPole + (upright.CornersOnClips ? 1 : 0)));
                    break;
                case UprightStep.ClipBar:
                    For(frame, upright.Name, HardwareKind.PipeClip).Should().Be(6, "each pole to rail and bar, the bar to two legs");
                    break;
                case UprightStep.TieCords:
                    For(frame, upright.Name, HardwareKind.Peg).Should().Be(upright.Cords);
                    For(frame, upright.Name, HardwareKind.GuyCord).Should().Be(upright.Cords);
                    break;
                case UprightStep.LayBallast:
                    For(frame, upright.Name, HardwareKind.BallastBag).Should().Be(4);
                    break;
                case UprightStep.LookOver:
                    For(frame, upright.Name, HardwareKind.PlantCord).Should().Be(1);
                    break;
                case UprightStep.DriveStakes:
                    frame.Workshop.Tools.Should().Contain(tool => tool.Kind == ToolKind.Level);
                    break;
                case UprightStep.PullStake:
                    frame.Workshop.Tools.Should().Contain(tool => tool.Kind == ToolKind.SpringBalance && tool.Load >= upright.StakeHold);
                    break;
                case UprightStep.JoinPoles or UprightStep.MarkClips or UprightStep.StandFeet or UprightStep.ClipPoles or UprightStep.CheckOver:
                    break;
                default:
                    throw new InvalidOperationException($"What does {step} take?");
            }
        }
    }

    // Counts of the table are those of one studio times the studios; what is sold by the metre is in whole metres, and never short.
    private static void InTheTable(FramePlan frame)
    {
        var rows = ShoppingTable.Of(frame.Workshop).Split(["\r\n", "\n"], StringSplitOptions.RemoveEmptyEntries);
        rows.Should().HaveCount(1 + frame.Shopping.Count);
        foreach (var line in frame.Workshop.Hardware)
        {
            var bought = frame.Shopping.Single(shop => ReferenceEquals(shop.Hardware, line)).Count;
            var once = line.Kind is HardwareKind.NutGlue or HardwareKind.WipingCloth;
            if (line.ByTheMetre)
            {
                bought.Should().BeGreaterThanOrEqualTo((int)Math.Floor(line.Whole.Meters * frame.Studios)).And.BeLessThan((int)Math.Floor(line.Whole.Meters * frame.Studios) + 2);
            }
            else
            {
                bought.Should().Be(once ? 1 : line.Places.Sum(place => place.Count) * frame.Studios);
            }

            rows.Should().Contain(row => row.Contains(HardwareText.Name(line).Replace("\"", "\"\"", StringComparison.Ordinal), StringComparison.Ordinal) && row.Contains(FormattableString.Invariant($",{bought},"), StringComparison.Ordinal));
        }
    }

    private static Dictionary<HardwareKind, int> Counts(FramePlan frame) =>
        frame.Workshop.Hardware.Where(line => line.For is null || line.Kind == HardwareKind.HeadBand).GroupBy(line => line.Kind).ToDictionary(kind => kind.Key, kind => kind.Sum(line => line.Places.Sum(place => place.Count)));

    private static void Expect(Dictionary<HardwareKind, int> bought, HardwareKind kind, int count, FramePlan frame) =>
        bought.GetValueOrDefault(kind).Should().Be(count, $"{kind} of a frame {frame.Geometry.Shape}");

    private static HardwareLine Line(FramePlan frame, HardwareKind kind) => frame.Workshop.Hardware.First(line => line.Kind == kind);

    private static int For(FramePlan frame, string owner, HardwareKind kind) => frame.Workshop.Hardware.Where(line => line.Kind == kind && line.For == owner).Sum(line => line.Count);
}
