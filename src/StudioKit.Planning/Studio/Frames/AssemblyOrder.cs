using StudioKit.Kits;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>The order in which a frame goes together and comes apart, read off its joints and pieces.</summary>
internal static class AssemblyOrder
{
    /// <summary>What to put together, a step each.</summary>
    public static IReadOnlyList<string> Build(KitSpec kit, FrameResult frame, IReadOnlyList<FoldedSoftbox> softboxes, IReadOnlyList<FlashBelow> flashes, IReadOnlyList<FootSetting> feet) =>
    [
        "Lay out all pieces and fittings by their labels. Draw the insertion mark on both ends of every piece; every joint is pushed home dry to its mark, with a twist, and never glued.",
        .. Split(frame),
        .. frame.Feet.Count > 0 ? [Feet(kit, frame)] : Array.Empty<string>(),
        .. new[] { (Name: "left", Sign: -1), (Name: "right", Sign: 1) }.Select(side => Side(frame, side.Name, side.Sign)),
        $"Stand the two sides up and join them across, one rail after the other: {Across(frame)}.",
        .. frame.Joints.Any(joint => joint.Pinned) ? [$"Push the pins in at {Names(frame.Joints.Where(joint => joint.Pinned).Select(joint => joint.Label))}: these joints are pulled when the frame is lifted."] : Array.Empty<string>(),
        .. feet.Count > 0 ? [OnSlope(kit, feet)] : Array.Empty<string>(),
        .. frame.Feet.Count > 0 ? ["Set the frame where it will stand, uphill side first, and turn the feet until a level on two neighbouring rails reads true. Count the threads: every foot keeps at least 15 mm in its nuts."] : Array.Empty<string>(),
        .. Holding(kit),
        Rests(frame),
        Panel(frame),
        .. kit.Panel.Skirts ? ["Hang the skirts over the rails, seams outwards, and peg or clip them so that no light leaks under the panel's edge."] : Array.Empty<string>(),
        .. softboxes.Select(box => $"Fold {box.Modifier} along its dashed lines, glue the flaps to the inside, cut the crossed opening and fold its four tabs out over the head of {box.Flash}; an elastic band holds it. Keep sheet and cloth from touching the flash window, which gets hot."),
        .. flashes.Select(flash => Below(flash, flashes.Count > 1)),
    ];

    /// <summary>What to take apart, a step each.</summary>
    public static IReadOnlyList<string> TakeApart(KitSpec kit, FrameResult frame, IReadOnlyList<CutListEntry> pieces) =>
    [
        "Switch off every flash, let it rest and take it down first; it stays charged for days, so it travels with its foot covered and is never opened.",
        "Unclip the panel, wipe it with water and a soft cloth, lay it between two cloths and carry it flat or in its bag, film or cloth on both faces.",
        .. kit.Panel.Skirts ? ["Shake out and roll up the skirts; they pad the panel."] : Array.Empty<string>(),
        .. kit.Frame.Ballast > Mass.Zero ? ["Empty the ballast bag where it was filled."] : Array.Empty<string>(),
        .. kit.Frame.Pegs.Count > 0 ? [FormattableString.Invariant($"Draw all {kit.Frame.Pegs.Count} pegs and count them.")] : Array.Empty<string>(),
        "Pull out the pins, then the rails across, then lay the two sides down and take them apart; twist, don't lever. Fittings stay on one end of a piece where that still fits the bag.",
        .. frame.Feet.Count > 0 ? ["Screw the feet in to their shortest."] : Array.Empty<string>(),
        $"Bundle the pieces by letter and count them: {string.Join(", ", pieces.Select(piece => FormattableString.Invariant($"{piece.Count} of {piece.Group} ({piece.Rounded.Millimeters:0.#} mm)")))}.",
        FormattableString.Invariant($"Count the fittings: {frame.Joints.Count}."),
    ];

    private static IEnumerable<string> Split(FrameResult frame)
    {
        var couplings = frame.Joints.Where(joint => joint.Kind == FittingKind.Coupling).ToList();
        if (couplings.Count > 0)
        {
            yield return $"Join the pieces that are split for the pack: {string.Join(", ", couplings.Select(joint => $"{string.Join(" and ", joint.Ports.Select(port => port.Member))} in coupling {joint.Label}"))}.";
        }
    }

    private static string Feet(KitSpec kit, FrameResult frame)
    {
        var (shortest, longest) = (frame.Feet.Min(foot => foot.ShortestExtension.Millimeters), frame.Feet.Max(foot => foot.LongestExtension.Millimeters));
        return FormattableString.Invariant(
            $"Screw a foot into the cap of every leg ({Names(frame.Feet.Select(foot => foot.Joint))}) and set it to {frame.Feet[0].LevelExtension.Millimeters:0} mm from the cap's floor to the ground; for a slope of {kit.Site.Slope.Degrees:0.#}° the feet must reach from {shortest:0} to {longest:0} mm.");
    }

    private static string OnSlope(KitSpec kit, IReadOnlyList<FootSetting> feet) => FormattableString.Invariant(
        $"Where the ground falls {kit.Site.Slope.Degrees:0.#}° as the kit says, turn the feet beforehand, cap's floor to ground: {string.Join(", ", feet.Select(Set))}.")
        + (feet.All(foot => foot.InReach) ? "" : " Where a foot does not reach, dig in the uphill side.");

    private static string Set(FootSetting foot) => FormattableString.Invariant($"{foot.Joint} {foot.Extension.Millimeters:0} mm{(foot.InReach ? "" : " (beyond its screw)")}");

    // A side is everything that stays left or right of the middle: legs, side rail, stretcher, post.
    private static string Side(FrameResult frame, string name, int sign)
    {
        var places = frame.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
        var members = frame.Members.Where(member => places[member.From].Right * sign > 0 && Math.Abs(places[member.From].Right - places[member.To].Right) < 1e-9).ToList();
        var joins = members.Select(member => $"{member.Label} from {member.From} to {member.To}");
        return $"Build the {name} side flat on the ground, from the top down: {string.Join(", ", joins)}.";
    }

    private static string Across(FrameResult frame)
    {
        var places = frame.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
        var members = frame.Members
            .Where(member => Math.Abs(places[member.From].Right - places[member.To].Right) > 1e-9)
            .OrderBy(member => places[member.From].Up);
        return string.Join(", ", members.Select(member => $"{member.Label} from {member.From} to {member.To}"));
    }

    private static IEnumerable<string> Holding(KitSpec kit)
    {
        if (kit.Frame.Ballast > Mass.Zero)
        {
            yield return $"Hang {PlanFormat.Mass(kit.Frame.Ballast)} (a bag of sand, stones or water) under the middle by cords from the four top corners.";
        }

        if (kit.Frame.Pegs.Count > 0)
        {
            yield return kit.Frame.Pegs.Guys
                ? FormattableString.Invariant($"Tie a cord to each top corner, lead it outwards at 45° to a peg as far from the leg as the corner is high, and draw all {kit.Frame.Pegs.Count} cords taut; mark them, as people trip over them. Pull a peg with a spring balance: it must hold {kit.Frame.Pegs.Hold.Kilograms:0.0} kg.")
                : FormattableString.Invariant(
                $"Peg the feet down with {kit.Frame.Pegs.Count} pegs, the same number at every foot, slanting away from the frame. Pull one with a spring balance: it must hold {kit.Frame.Pegs.Hold.Kilograms:0.0} kg.");
        }
    }

    private static string Rests(FrameResult frame)
    {
        var rests = string.Join(", ", frame.Ledge.Rests.Select(rest => FormattableString.Invariant($"{rest.Length.Millimeters:0} mm on {rest.Member}")));
        return frame.Ledge.Seat == PanelSeat.OverRails
            ? $"Stick a strip of {PlanFormat.Millimetres(frame.Ledge.Pad)} pad along the top of the rails under the panel's edges, from fitting to fitting, once; it stays on the pipe: {rests}."
            : $"Screw a strip of ledge along the inside of the rails, its top level with their middles, from fitting to fitting, once; it stays on the pipe: {rests}.";
    }

    private static string Panel(FrameResult frame)
    {
        var ledge = frame.Ledge;
        var clearance = PlanFormat.Millimetres(ledge.EdgeClearance);
        return ledge.Seat == PanelSeat.OverRails
            ? FormattableString.Invariant($"Lay the panel on its pads over the rails, glossy side down, front edge flush with the front rail, and clip it at {ledge.ClipPoints.Count} points; clips only hold it down, so that it can grow by {clearance} at every edge.")
            : FormattableString.Invariant($"Lay the panel on the ledge between the rails with {clearance} of room at every edge, and clip it at {ledge.ClipPoints.Count} points.");
    }

    private static string Below(FlashBelow flash, bool named)
    {
        var (name, where) = named ? ($"flash {flash.Flash}", $" For {string.Join(", ", flash.SetUps)}:") : ("the flash", "");
        var step = flash.Support switch
        {
            FlashSupport.Ground => $"Lay {name} on the ground under the panel, its bright window facing up, at the place that the plan view gives.",
            FlashSupport.OwnStand => $"Put {name} on a stand of its own under the panel, its bright window {PlanFormat.Millimetres(flash.BelowPanel)} under the panel, facing up, at the place that the plan view gives.",
            _ => $"Push {(named ? "the clamp of " + name : "the flash's clamp")} into the open socket of {flash.CradleJoint} and set its bright window {PlanFormat.Millimetres(flash.BelowPanel)} under the panel, facing up.",
        };
        return where.Length == 0 ? step : $"{where[1..]} {char.ToLowerInvariant(step[0])}{step[1..]}";
    }

    private static string Names(IEnumerable<string> labels) => string.Join(", ", labels);
}
