using StudioKit.Kits;
using StudioKit.Kits.Studio;
using StudioKit.Physics;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Studio.Assembling;
using StudioKit.Planning.Studio.Hardware;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>The order in which a frame goes together and comes apart, read off its joints and pieces.</summary>
internal static class AssemblyOrder
{
    /// <summary>What to put together, one act a step: frame, what holds it down, panel, flashes, and the skirts last, which close the box.</summary>
    public static IReadOnlyList<AssemblyStep> Build(
        KitSpec kit, PanelPlan panel, FrameResult frame, IReadOnlyList<FoldedSoftbox> softboxes, IReadOnlyList<FlashBelow> flashes, IReadOnlyList<FootSetting> feet)
    {
        var fittings = FrameDesign.CaseOf(kit.Frame.Fittings);
        var steps = new FrameSteps(frame, kind => fittings.Of(kind).TakeOff + fittings.Of(kind).SocketDepth);
        return
        [
            .. frame.Members.Count > 0 ? [Marks(kit, frame, fittings)] : Array.Empty<AssemblyStep>(),
            .. frame.Feet.Count > 0 ? [Feet(kit, frame)] : Array.Empty<AssemblyStep>(),
            .. steps.Of([.. frame.Feet.Select(foot => foot.Joint)]),
            .. frame.Joints.Any(joint => joint.Pinned) ? [new AssemblyStep.PinJoints([.. frame.Joints.Where(joint => joint.Pinned).Select(joint => joint.Label)], JointHardware.PinHole(kit, frame))] : Array.Empty<AssemblyStep>(),
            .. frame.Feet.Count > 0 ? [new AssemblyStep.SetOnFeet(feet.Count > 0 ? kit.Site.Slope : null, [.. feet], JointHardware.KeptInNuts)] : Array.Empty<AssemblyStep>(),
            .. Holding(kit, frame),
            .. frame.Ledge.Rests.Count > 0 ? [new AssemblyStep.LayStrips(frame.Ledge)] : Array.Empty<AssemblyStep>(),
            Panel(kit, panel, frame),
            .. flashes.Select(AssemblyStep (flash) => new AssemblyStep.PutFlash(flash, flashes.Count > 1)),
            .. flashes.Count > 0 ? [new AssemblyStep.TestFlash([.. flashes.Select(flash => flash.Flash).Distinct(StringComparer.Ordinal)], kit.Panel.Skirts)] : Array.Empty<AssemblyStep>(),
            .. SheetParts.Seams(kit) is { } seams ? [new AssemblyStep.HangSkirts(seams)] : Array.Empty<AssemblyStep>(),
            .. softboxes.Select(AssemblyStep (box) => new AssemblyStep.FoldSoftbox(box)),
        ];
    }

    /// <summary>What to take apart, one act a step.</summary>
    public static IReadOnlyList<PackingStep> TakeApart(KitSpec kit, FrameResult frame, IReadOnlyList<AssemblyStep> built, IReadOnlyList<CutListEntry> pieces)
    {
        var flashes = built.OfType<AssemblyStep.TestFlash>().SelectMany(step => step.Flashes).ToList();
        return
        [
            new PackingStep.SwitchOff(),
            .. kit.Panel.Skirts ? [new PackingStep.TakeSkirts()] : Array.Empty<PackingStep>(),
            .. flashes.Count > 0 ? [new PackingStep.TakeFlashes([.. flashes])] : Array.Empty<PackingStep>(),
            new PackingStep.TakePanel(frame.Ledge.ClipPoints.Count),
            .. kit.Frame.Ballast > Mass.Zero ? [new PackingStep.EmptyBallast()] : Array.Empty<PackingStep>(),
            .. kit.Frame.Pegs.Count > 0 ? [new PackingStep.DrawPegs(kit.Frame.Pegs.Count, kit.Frame.Pegs.Guys ? kit.Frame.Pegs.Count : 0)] : Array.Empty<PackingStep>(),
            .. built.OfType<AssemblyStep.PinJoints>().Select(PackingStep (step) => new PackingStep.PullPins(step.At)),
            .. built.OfType<AssemblyStep.PushAcross>().Select(PackingStep (step) => new PackingStep.PartSides(step.Members)),
            .. built.OfType<AssemblyStep.JoinSide>().Select(PackingStep (step) => new PackingStep.PartLegs(step.Side, step.Members)),
            .. built.OfType<AssemblyStep.FitFeet>().Select(PackingStep (step) => new PackingStep.ShortenFeet(step.Joints)),
            .. pieces.Count > 0 ? [new PackingStep.BundlePieces([.. pieces.Select(piece => (piece.Group, piece.Rounded, piece.Count))])] : Array.Empty<PackingStep>(),
            .. frame.Joints.Count > 0 ? [new PackingStep.CountFittings(frame.Joints.Count)] : Array.Empty<PackingStep>(),
        ];
    }

    private static AssemblyStep.MarkPieces Marks(KitSpec kit, FrameResult frame, FittingSet fittings) => new(
        frame.Members.Count, [.. frame.FittingCounts.Keys.Select(kind => (kind, fittings.Of(kind).SocketDepth - kit.Frame.InsertionGap))]);

    private static AssemblyStep.FitFeet Feet(KitSpec kit, FrameResult frame)
    {
        var longest = Length.FromMeters(frame.Feet.Max(foot => foot.LongestExtension.Meters));
        var level = frame.Feet[0].LevelExtension;
        return new AssemblyStep.FitFeet(level, Length.FromMeters(frame.Feet.Min(foot => foot.ShortestExtension.Meters)), longest, kit.Site.Slope)
        {
            Joints = [.. frame.Feet.Select(foot => foot.Joint)],
            WrongWays = longest > level ? [new WrongWay(WrongWayKind.FootLong, null, [])] : [],
        };
    }

    private static IEnumerable<AssemblyStep> Holding(KitSpec kit, FrameResult frame)
    {
        if (kit.Frame.Ballast > Mass.Zero)
        {
            yield return new AssemblyStep.HangBallast(kit.Frame.Ballast);
        }

        if (kit.Frame.Pegs.Count > 0)
        {
            yield return new AssemblyStep.DrivePegs(kit.Frame.Pegs.Count, kit.Frame.Pegs.Hold, kit.Frame.Pegs.Guys ? Corners(frame) : []);
        }
    }

    // The highest fitting over each of the four outermost feet.
    private static ValueList<RailHeight> Corners(FrameResult frame)
    {
        var reach = frame.Joints.Max(joint => Math.Abs(joint.Position.Right)) - 0.001;
        var outer = frame.Joints.Where(joint => Math.Abs(joint.Position.Right) > reach).ToList();
        var (front, back) = (outer.Min(joint => joint.Position.Back) + 0.001, outer.Max(joint => joint.Position.Back) - 0.001);
        return
        [
            .. outer.Where(joint => joint.Position.Back < front || joint.Position.Back > back)
                .GroupBy(joint => (joint.Position.Right > 0, joint.Position.Back > 0))
                .Select(column => column.MaxBy(joint => joint.Position.Up)!)
                .GroupBy(joint => Math.Round(joint.Position.Up, 4))
                .Select(level => new RailHeight(Length.FromMeters(level.Key), [.. level.Select(joint => joint.Label)])),
        ];
    }

    private static AssemblyStep.LayPanel Panel(KitSpec kit, PanelPlan panel, FrameResult frame)
    {
        var satin = kit.Panel.Finish == SheetFinish.Satin;
        return new AssemblyStep.LayPanel(frame.Ledge, frame.PanelHeight, satin, SheetSweeps.Of(panel, frame))
        {
            WrongWays = satin ? [new WrongWay(WrongWayKind.GlossUp, null, [])] : [],
        };
    }
}
