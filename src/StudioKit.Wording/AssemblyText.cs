using StudioKit.Physics;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Assembling;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Steps of putting a frame up and of packing it down, as sentences.</summary>
internal static class AssemblyText
{
    /// <summary>What to do, in sentences.</summary>
    /// <param name="step">The step.</param>
    /// <param name="frame">The frame that it builds.</param>
    public static string Of(AssemblyStep step, FrameResult frame) => Joined(Act(step, frame), Vanishing(step), Open(step, frame));

    /// <summary>What it is about, a few words.</summary>
    public static string Title(AssemblyStep step) => step switch
    {
        AssemblyStep.MarkPieces => "Mark the pieces",
        AssemblyStep.FitFeet => "Feet into their caps",
        AssemblyStep.BuildLegs legs => $"Legs of the {Side(legs.Side)} side",
        AssemblyStep.JoinSide side => $"Join the {Side(side.Side)} side",
        AssemblyStep.PushAcross => "Rails across, into the left side",
        AssemblyStep.CloseFrame => "The right side onto the rails",
        AssemblyStep.PinJoints => "Pins",
        AssemblyStep.SetOnFeet => "Set it down and level it",
        AssemblyStep.HangBallast => "Ballast",
        AssemblyStep.DrivePegs pegs => pegs.Corners.Count > 0 ? "Cords and pegs" : "Pegs",
        AssemblyStep.LayStrips => "What the panel rests on",
        AssemblyStep.LayPanel => "The panel",
        AssemblyStep.PutFlash put => put.Named ? $"Flash {put.Flash.Flash} under the panel" : "The flash under the panel",
        AssemblyStep.TestFlash => "Test flash",
        AssemblyStep.HangSkirts => "Skirts",
        AssemblyStep.FoldSoftbox fold => $"Fold {fold.Box.Modifier}",
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "A step without words."),
    };

    /// <summary>A mistake, as the words under its crossed sketch.</summary>
    public static string Wrong(WrongWay wrong) => wrong.Kind switch
    {
        WrongWayKind.Turned => $"wrong: {wrong.Joint} turned",
        WrongWayKind.FootLong => "wrong: left long",
        WrongWayKind.GlossUp => "wrong: glossy side up",
        _ => throw new ArgumentOutOfRangeException(nameof(wrong), wrong.Kind, "A mistake without words."),
    };

    /// <summary>A packing step in sentences.</summary>
    public static string Of(PackingStep step) => step switch
    {
        PackingStep.SwitchOff => "Switch off every flash, let it rest and take those above down first; a flash stays charged for days, so it travels with its foot covered and is never opened.",
        PackingStep.TakeSkirts => "Take the skirts off, shake them out and roll them up; they pad the panel.",
        PackingStep.TakeFlashes take => $"Take {Listed(take.Flashes)} out from under the panel.",
        PackingStep.TakePanel panel => $"Unclip the panel, count its {panel.Clips} clips, wipe it with water and a soft cloth, lay it between two cloths and carry it flat or in its bag, film or cloth on both faces.",
        PackingStep.EmptyBallast => "Empty the ballast bag where it was filled.",
        PackingStep.DrawPegs pegs => $"Draw all {pegs.Count} pegs and count them{(pegs.Cords > 0 ? $", with their {pegs.Cords} cords" : "")}; close the holes.",
        PackingStep.PullPins pins => $"Pull the pins out at {Names(pins.At)} and count {(pins.At.Count == 1 ? "it" : $"them: {pins.At.Count} joints")}.",
        PackingStep.PartSides part => $"Pull the right side off the rails across, then the rails out of the left side ({Names(part.Rails)}): twist, don't lever.",
        PackingStep.PartLegs part => $"Lay the {Side(part.Side)} side down and pull its rails ({Names(part.Rails)}) out of its legs. Fittings stay on one end of a piece where that still fits the bag.",
        PackingStep.ShortenFeet feet => $"Screw the feet at {Names(feet.Joints)} in to their shortest.",
        PackingStep.BundlePieces pieces => $"Bundle the pieces by letter and count them: {string.Join(", ", pieces.Pieces.Select(piece => $"{piece.Count} of {piece.Letter} ({CutFormat.PieceLength(piece.Cut)})"))}.",
        PackingStep.CountFittings fittings => $"Count the fittings: {fittings.Count}.",
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "A step without words."),
    };

    /// <summary>A fitting of a kind, in a word.</summary>
    public static string Fitting(FittingKind kind) => kind switch
    {
        FittingKind.Elbow => "elbow",
        FittingKind.Tee => "tee",
        FittingKind.Cross => "cross",
        FittingKind.Corner => "corner",
        FittingKind.Coupling => "coupling",
        FittingKind.Cap => "cap",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A fitting without a name."),
    };

    private static string Act(AssemblyStep step, FrameResult frame) => step switch
    {
        AssemblyStep.MarkPieces marks => $"Lay out all {marks.Pieces} pieces and {frame.Joints.Count} fittings by their labels. Draw the insertion mark round both ends of every piece: {Depths(marks)}. Every joint is pushed home dry to its mark, with a twist, and never glued.",
        AssemblyStep.FitFeet feet => Feet(feet),
        AssemblyStep.BuildLegs legs => Legs(legs),
        AssemblyStep.JoinSide side => JoinSide(side, frame),
        AssemblyStep.PushAcross across => $"Stand the left side up as it will stand. Push the rails across into its sockets, from the ground up: {Rails(across.Rails)}. {InLine(across.Runs, across)}",
        AssemblyStep.CloseFrame close => $"Bring the right side, its front to the front, and push it onto all the rails at once, the lowest first: {Ends(close)}. Check that every mark meets its fitting's edge.",
        AssemblyStep.PinJoints pins => $"At each of {Names(pins.At)}, pushed home, drill {PlanFormat.AsSold(pins.Hole.Width)} straight through fitting and pipe, {Cut(pins.Hole.FromMouth)} from the fitting's mouth (template), once and for all; file the burrs off, outside and in. Push a pin through each: these joints are pulled when the frame is lifted.",
        AssemblyStep.SetOnFeet set => SetDown(set),
        AssemblyStep.HangBallast ballast => $"Hang {MeasureFormat.Mass(ballast.Mass)} (a bag of sand, stones or water) under the middle by cords from the four top corners.",
        AssemblyStep.DrivePegs pegs => Pegs(pegs),
        AssemblyStep.LayStrips strips => Strips(strips.Ledge),
        AssemblyStep.LayPanel panel => Panel(panel),
        AssemblyStep.PutFlash put => Below(put.Flash, put.Named),
        AssemblyStep.TestFlash test => $"Fire {(test.Flashes.Count == 1 ? "it" : "each of them")} once by hand: the whole panel must light up and nothing of the frame may shade it.{(test.ClosedNext ? " Now is the time to mend it: the skirts close the box." : "")}",
        AssemblyStep.HangSkirts skirts => $"Hang the skirts over the rails, seams outwards, {Cut(skirts.Seams.RoundRail)} of each folded round its rail, and clip or peg them so that no light leaks under the panel's edge. The flash can no longer be reached without lifting one.",
        AssemblyStep.FoldSoftbox fold => $"Fold {fold.Box.Modifier} along its dashed lines, glue the flaps to the inside, cut the crossed opening and fold its four tabs out over the head of {fold.Box.Flash}; an elastic band holds it. Keep sheet and cloth from touching the flash window, which gets hot.",
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "A step without words."),
    };

    private static string Depths(AssemblyStep.MarkPieces marks) => string.Join(", ", marks.Depths
        .GroupBy(depth => Cut(depth.Depth))
        .Select(group => $"{group.Key} from the end in {Listed([.. group.Select(depth => Fitting(depth.Kind))])}"));

    private static string Feet(AssemblyStep.FitFeet feet) =>
        $"Drill the floor of each cap ({Names(feet.Joints)}), glue a nut over the hole inside and let it set. Screw a foot into it from below, its other nut and its washer on the screw, and set all alike to {Cut(feet.Level)} from the cap's floor to the ground."
        + (feet.Longest > feet.Level ? $" For a slope of {MeasureFormat.Degrees(feet.Slope)} they must reach from {Cut(feet.Shortest)} to {Cut(feet.Longest)}." : "");

    private static string Legs(AssemblyStep.BuildLegs legs)
    {
        var place = new[] { "Front leg", "Back leg" };
        var names = legs.Runs.Count switch { 1 => ["The leg"], 2 => place, _ => legs.Runs.Select((_, i) => i == 0 ? place[0] : i == legs.Runs.Count - 1 ? place[1] : "Middle leg").ToArray() };
        return $"Put each leg together from the top down and hold it as it will stand. {string.Join(' ', legs.Runs.Select((run, i) => $"{names[i]}: {Names(run.Parts)}."))}";
    }

    private static string JoinSide(AssemblyStep.JoinSide side, FrameResult frame)
    {
        var legs = frame.Feet.Count > 0;
        return $"{(legs ? "Push each rail into the front leg, then the back leg onto its other end" : "Push the fittings onto the rail")}, from the ground up: {Rails(side.Rails)}. {InLine(side.Runs, side)}";
    }

    // Where rails go through fittings that come in with them, their order is said.
    private static string InLine(ValueList<PartRun> runs, AssemblyStep step)
    {
        var broken = runs.Where(run => run.Parts.Any(part => step.Joints.Contains(part))).ToList();
        return broken.Count == 0 ? "" : $"In line from the {(runs[0].Towards == SocketDirection.Right ? "left" : "front")}: {string.Join("; ", broken.Select(run => Names(run.Parts)))}.";
    }

    private static string Rails(IEnumerable<RailHeight> rails) => string.Join("; ", rails.Select(rail => $"{Names(rail.Parts)} at {Cut(rail.Height)}"))
        + " over level ground, to the middle of the rail";

    private static string Ends(AssemblyStep.CloseFrame close) => string.Join("; ", close.Runs.OrderBy(run => close.Rails.ToList().FindIndex(rail => rail.Parts.Contains(run.Parts[1]))).Select(run => $"{run.Parts[^2]} into {run.Parts[^1]}"));

    private static string SetDown(AssemblyStep.SetOnFeet set) =>
        (set.Settings.Count > 0
            ? $"Where the ground falls {MeasureFormat.Degrees(set.Slope ?? Angle.Zero)} as the kit says, turn the feet beforehand, cap's floor to ground: {string.Join(", ", set.Settings.Select(foot => $"{foot.Joint} {Cut(foot.Extension)}{(foot.InReach ? "" : " (beyond its screw)")}"))}."
                + (set.Settings.All(foot => foot.InReach) ? " " : " Where a foot does not reach, dig in the uphill side. ")
            : "")
        + $"Set the frame where it will stand, its front towards the camera, uphill side first, and turn the feet until a level on two neighbouring rails reads true. Count the threads: every foot keeps at least {Cut(set.LeastThread)} in its nuts.";

    private static string Pegs(AssemblyStep.DrivePegs pegs) => pegs.Corners.Count > 0
        ? $"Tie a cord to each top corner ({string.Join("; ", pegs.Corners.Select(level => $"{Names(level.Parts)}, {Cut(level.Height)} up"))}), lead it outwards at 45° to a peg as far from the leg as the corner is high, and draw all {pegs.Count} cords taut; mark them, as people trip over them. Pull a peg with a spring balance: it must hold {MeasureFormat.Mass(pegs.Hold)}."
        : $"Peg the feet down with {pegs.Count} pegs, the same number at every foot, slanting away from the frame. Pull one with a spring balance: it must hold {MeasureFormat.Mass(pegs.Hold)}.";

    private static string Strips(PanelLedge ledge)
    {
        var rests = string.Join(", ", ledge.Rests.Select(rest => $"{Cut(rest.Length)} on {rest.Member}"));
        return ledge.Seat == PanelSeat.OverRails
            ? $"Stick a strip of {Cut(ledge.Pad)} pad along the top of the rails under the panel's edges, from fitting to fitting, once; it stays on the pipe: {rests}."
            : $"Screw a strip of ledge along the inside of the rails, its top level with their middles, from fitting to fitting, once; it stays on the pipe: {rests}.";
    }

    private static string Panel(AssemblyStep.LayPanel panel)
    {
        var (ledge, clearance) = (panel.Ledge, Cut(panel.Ledge.EdgeClearance));
        var side = panel.SatinUp ? ", satin side up" : "";
        return (ledge.Seat == PanelSeat.OverRails
                ? $"Lay the panel on its pads over the rails{side}, its front edge flush with the front rail, and clip it at {ledge.ClipPoints.Count} points; clips only hold it down, so that it can grow by {clearance} at every edge."
                : $"Lay the panel on the ledge between the rails{side} with {clearance} of room at every edge, and clip it at {ledge.ClipPoints.Count} points.")
            + (panel.Sweep is { } sweep ? $" Bend its back up slowly, cold, over its full width, to the rail {Cut(sweep.TopRail)} up, and clip it there." : "")
            + $" Its underside stands {Cut(panel.Underside)} over level ground.";
    }

    private static string Below(FlashBelow flash, bool named)
    {
        var (name, where) = named ? ($"flash {flash.Flash}", $"For {string.Join(", ", flash.SetUps)}: ") : ("the flash", "");
        var place = $"its middle {Cut(flash.FromLeft)} from the panel's left edge and {Cut(flash.FromFront)} from its front edge";
        var step = flash.Support switch
        {
            FlashSupport.Ground => $"lay {name} on the ground under the panel, its bright window facing up, {Cut(flash.BelowPanel)} under the panel, {place}.",
            FlashSupport.OwnStand => $"put {name} on a stand of its own under the panel, its bright window {Cut(flash.BelowPanel)} under the panel, facing up, {place}.",
            _ => $"push the clamp of {name} into the free socket of {flash.CradleJoint}, which points up, and set its bright window {Cut(flash.BelowPanel)} under the panel, facing up; it comes to lie with {place}.",
        };
        return where.Length > 0 ? where + step : char.ToUpperInvariant(step[0]) + step[1..];
    }

    private static string Vanishing(AssemblyStep step) => string.Join(' ', step.ShortPieces.Select(pieces =>
        $"{pieces.Letter} is short, {CutFormat.PieceLength(pieces.Length)}, {(pieces.Count == 1 ? "one piece" : $"{pieces.Count} pieces")}: pushed home, {(pieces.Shows <= Length.FromMillimeters(0.5) ? "nothing of it is seen, its two fittings touch" : $"only {Cut(pieces.Shows)} of it is seen between its two fittings")}."));

    private static string Open(AssemblyStep step, FrameResult frame)
    {
        var ways = step.FreeSockets
            .GroupBy(socket => socket.Joint, StringComparer.Ordinal)
            .Select(joint => (Joint: joint.Key, Ways: Listed([.. joint.Select(socket => Way(socket, frame)).Distinct(StringComparer.Ordinal)])))
            .GroupBy(joint => joint.Ways, StringComparer.Ordinal)
            .Select(group => $"{Names(group.Select(joint => joint.Joint))} {group.Key}")
            .ToList();
        return ways.Count == 0 ? "" : $"Free sockets now point: {string.Join("; ", ways)}.";
    }

    private static string Way(FreeSocket socket, FrameResult frame)
    {
        var right = frame.Joints.First(joint => joint.Label == socket.Joint).Position.Right;
        return socket.Direction switch
        {
            SocketDirection.Left => right > 0 ? "left (to the other side)" : "left",
            SocketDirection.Right => right < 0 ? "right (to the other side)" : "right",
            SocketDirection.Front => "front",
            SocketDirection.Back => "back",
            SocketDirection.Up => socket.Later is null ? "up (for the flash)" : "up",
            _ => "down",
        };
    }

    private static string Side(FrameSide side) => side == FrameSide.Left ? "left" : "right";

    private static string Names(IEnumerable<string> labels) => string.Join(", ", labels);

    private static string Listed(ValueList<string> words) => words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}";

    private static string Joined(params ReadOnlySpan<string> parts) => string.Join(' ', parts.ToArray().Where(part => part.Length > 0).Select(part => part.Trim()));

    private static string Cut(Length length) => CutFormat.CutLength(length);
}
