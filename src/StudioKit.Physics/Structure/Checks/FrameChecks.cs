using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Structure.Checks;

/// <summary>Checks of rails, legs and sway.</summary>
internal static class FrameChecks
{
    private const double RailSagShare = 0.005;
    private const double LeanShare = 0.02;
    private const double FreeTopFactor = 2;

    public static IEnumerable<StructuralCheck> Of(StudioCheckCase studio, PipeWarmth warmth)
    {
        var rail = LongestRail(studio.Frame);
        yield return RailSag(studio, warmth, rail);
        yield return RailStress(studio, warmth, rail);
        if (studio.Frame.Feet.Count > 0)
        {
            yield return Buckling(studio, warmth);
            yield return studio is { Guyed: true, Pegs: > 0 } ? Cords(studio) : Sway(studio, warmth);
        }
    }

    // Rails between legs or posts, split or not: a coupling carries less than whole pipe, but the span is the whole.
    private static RailSpan LongestRail(FrameResult frame)
    {
        var places = frame.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
        var held = frame.Members.Where(member => member.Role == FrameMemberRole.Leg)
            .SelectMany(member => new[] { member.From, member.To }).ToHashSet(StringComparer.Ordinal);
        var rails = frame.Members.Where(member => member.Role is FrameMemberRole.CrossRail or FrameMemberRole.SideRail);
        return rails.GroupBy(member => (member.Role, Line: LineOf(member, places))).Select(rail => LongestSpan(rail, held)).MaxBy(span => span.Metres)!;
    }

    // The pieces of a rail follow each other; a leg under a joint ends a span.
    private static RailSpan LongestSpan(IEnumerable<FrameMember> rail, HashSet<string> held)
    {
        var (span, longest) = (RailSpan.None, RailSpan.None);
        foreach (var member in rail)
        {
            span = new RailSpan(span.Metres + member.CentreLine.Meters, [.. span.Labels, member.Label]);
            longest = span.Metres > longest.Metres ? span : longest;
            span = held.Contains(member.To) ? RailSpan.None : span;
        }

        return longest;
    }

    private static IReadOnlyList<string> Labels(FrameResult frame, FrameMemberRole role) =>
        [.. frame.Members.Where(member => member.Role == role).Select(member => member.Label)];

    private static (double First, double Second) LineOf(FrameMember member, Dictionary<string, FramePoint> places)
    {
        var place = places[member.From];
        return member.Role == FrameMemberRole.CrossRail ? (Math.Round(place.Back, 6), 0) : (Math.Round(place.Right, 6), 0);
    }

    private static double PanelWeight(StudioCheckCase studio) =>
        studio.Sheet.Density.KilogramsPerCubicMeter * PanelSag.Gravity * studio.Sheet.Thickness.Meters
        * studio.PanelWidth.Meters * studio.PanelDepth.Meters;

    private static StructuralCheck RailSag(StudioCheckCase studio, PipeWarmth warmth, RailSpan rail)
    {
        var span = rail.Metres;
        var load = (PanelWeight(studio) + (studio.Subject.Kilograms * PanelSag.Gravity)) / (2 * span);
        var own = PipeMass.PerMetre(studio.Pipe) * PanelSag.Gravity;
        var sag = Length.FromMeters(BeamBending.SupportedUniform(load + own, span, warmth.Stiffness));
        var limit = Length.FromMeters(RailSagShare * span);
        return new StructuralCheck(
            StructuralCheckKind.RailSag,
            rail.Labels,
            sag.ToUnit(UnitsNet.Units.LengthUnit.Millimeter),
            limit.ToUnit(UnitsNet.Units.LengthUnit.Millimeter),
            sag / limit,
            ["Half the panel is taken to rest on one rail, its ends free to turn.", "A two-hundredth of the span is common practice."],
            "Gere2009",
            "deflections of simple beams",
            sag > limit ? "A larger pipe, or a leg under the middle." : "");
    }

    private static StructuralCheck RailStress(StudioCheckCase studio, PipeWarmth warmth, RailSpan rail)
    {
        var span = rail.Metres;
        var modulus = PipeSection.Modulus(studio.Pipe.OutsideDiameter.Meters, studio.Pipe.Wall.Meters);
        var moment = (Guard.NonNegative(studio.Elbow.Newtons, nameof(studio.Elbow)) * span / 4)
            + ((PanelWeight(studio) + (studio.Subject.Kilograms * PanelSag.Gravity)) * span / 16);
        var stress = Pressure.FromPascals(moment / modulus);
        var capacity = studio.Pipe.Strength * warmth.StrengthFactor / Guard.Between(studio.StrengthSafety, 1, double.MaxValue, nameof(studio.StrengthSafety));
        var dip = BeamBending.SupportedCentral(studio.Elbow.Newtons, span, warmth.Stiffness) * 1000;
        return new StructuralCheck(
            StructuralCheckKind.RailStress,
            rail.Labels,
            stress.ToUnit(UnitsNet.Units.PressureUnit.Megapascal),
            capacity.ToUnit(UnitsNet.Units.PressureUnit.Megapascal),
            stress / capacity,
            [FormattableString.Invariant($"{(studio.StrengthSafety == 2 ? "Half" : $"1/{studio.StrengthSafety:0.##} of")} the strength at the day's warmth is allowed; the elbow presses the rail down by {dip:0} mm.")],
            "PPFA-UB3",
            "strength against temperature",
            stress > capacity ? "A larger pipe; keep elbows off." : "");
    }

    private static StructuralCheck Buckling(StudioCheckCase studio, PipeWarmth warmth)
    {
        var creep = studio.Pipe.SoftensLikePvc ? LegBuckling.PvcCreepShare : 1;
        var standing = (studio.StandingMass + studio.Ballast).Kilograms * PanelSag.Gravity / studio.Frame.Feet.Count;
        var guyed = studio is { Guyed: true, Pegs: > 0 };
        var cord = guyed ? Guys.SidewaysHold(studio.PegHold.Newtons) : 0;
        var critical = guyed
            ? LegBuckling.CriticalLoad(warmth.Stiffness, LegHeight(studio.Frame), 1)
            : Math.Min(Critical(studio, warmth, true), Critical(studio, warmth, false));

        // The standing load meets what stiffness creep leaves, the elbow what there is for a moment.
        var safety = Guard.Between(studio.BucklingSafety, 1, double.MaxValue, nameof(studio.BucklingSafety));
        var ratio = safety * ((standing / creep) + studio.Elbow.Newtons + cord) / critical;
        return new StructuralCheck(
            StructuralCheckKind.LegBuckling,
            Labels(studio.Frame, FrameMemberRole.Leg),
            Force.FromNewtons((standing / creep) + studio.Elbow.Newtons + cord),
            Force.FromNewtons(critical / safety),
            ratio,
            guyed
                ? [FormattableString.Invariant($"The elbow leans over one leg and a cord pulls it down; the standing load is raised for creep over weeks; a safety factor of {safety:0.##}."), "Cords keep the top in its place, so that a leg is taken as hinged at both ends."]
                : [FormattableString.Invariant($"The elbow leans over one leg; the standing load is raised for creep over weeks; a safety factor of {safety:0.##}."), "Stiffness of dry push fits differs widely: measure one joint."],
            "Gere2009",
            "columns, critical loads",
            ratio > 1 ? "Stretchers, shorter legs, a larger pipe, pinned joints or guys." : "");
    }

    // Stretchers divide the leg: held at both ends between and above them (K = 1 as the frame sways), at one end below the lowest (K = 2).
    private static double Critical(StudioCheckCase studio, PipeWarmth warmth, bool along)
    {
        var height = LegHeight(studio.Frame);
        var foot = studio.Frame.Feet[0].LevelExtension.Meters;
        double[] stops = [.. StretchersUp(studio.Frame, along).Select(up => up - foot), height];
        var between = stops.Zip(stops.Skip(1), (lower, upper) => upper - lower);
        var effective = between.Append(FreeTopFactor * stops[0]).Max();

        // One level of stretchers counts, as more only stiffen the frame.
        var joints = stops.Length > 1 ? 2 : 1;
        return LegBuckling.WithJoints(
            LegBuckling.CriticalLoad(warmth.Stiffness, effective, 1), height, studio.JointStiffness.NewtonMetersPerRadian, joints);
    }

    private static IEnumerable<double> StretchersUp(FrameResult frame, bool along)
    {
        var places = frame.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
        return frame.Members.Where(member => member.Role == FrameMemberRole.Stretcher)
            .Where(member => Math.Abs(places[member.From].Right - places[member.To].Right) < 1e-9 == along)
            .Select(member => places[member.From].Up).Distinct().Order();
    }

    private static StructuralCheck Sway(StudioCheckCase studio, PipeWarmth warmth)
    {
        var height = LegHeight(studio.Frame);
        var push = WindChecks.Worst(studio).Force.Newtons;
        var joints = studio.Frame.Members.Any(member => member.Role == FrameMemberRole.Stretcher) ? 2 : 1;
        var lean = Length.FromMeters(FrameSway.Lean(
            push, studio.Frame.Feet.Count, height, warmth.Stiffness, studio.JointStiffness.NewtonMetersPerRadian, joints));
        var limit = Length.FromMeters(LeanShare * height);
        return new StructuralCheck(
            StructuralCheckKind.Sway,
            Labels(studio.Frame, FrameMemberRole.Leg),
            lean.ToUnit(UnitsNet.Units.LengthUnit.Millimeter),
            limit.ToUnit(UnitsNet.Units.LengthUnit.Millimeter),
            lean / limit,
            ["Stiffness of dry push fits differs widely: measure one joint.", "A fiftieth of the height is common practice."],
            "Derived",
            "work of the push = energy in the joints and the bent legs",
            lean > limit ? "Pin the joints, add stretchers, or guy the frame to pegs." : "");
    }

    private static StructuralCheck Cords(StudioCheckCase studio)
    {
        var (push, hold) = (WindChecks.HardestPush(studio), WindChecks.GuyHold(studio));
        return new StructuralCheck(
            StructuralCheckKind.Cords,
            [],
            push,
            hold,
            hold > Force.Zero ? push / hold : double.MaxValue,
            [FormattableString.Invariant($"Half the cords, those to windward, are taken to hold; the push is taken at the top with a safety factor of {studio.WindSafety:0.##}."), "Keep the cords taut and mark them: people and animals trip over them."],
            "Derived",
            "components of a force at 45°",
            push > hold ? "More pegs, or pegs that hold more." : "");
    }

    private static double LegHeight(FrameResult frame) =>
        frame.PanelHeight.Meters - frame.Feet[0].LevelExtension.Meters;
}
