using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Structure.Checks;

/// <summary>Checks of the legs: buckling, and the lean or the cords that stop it.</summary>
internal static class LegChecks
{
    private const double LeanShare = 0.02;
    private const double FreeTopFactor = 2;

    public static IEnumerable<StructuralCheck> Of(StudioCheckCase studio, PipeWarmth warmth)
    {
        if (studio.Frame.Feet.Count > 0)
        {
            yield return Buckling(studio, warmth);
            yield return studio is { Guyed: true, Pegs: > 0 } ? Cords(studio) : Sway(studio, warmth);
        }
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
            LegLabels(studio.Frame),
            Force.FromNewtons((standing / creep) + studio.Elbow.Newtons + cord),
            Force.FromNewtons(critical / safety),
            ratio,
            guyed
                ? [new StructuralCaveat(StructuralCaveatKind.ElbowAndCordOverLeg) { Safety = safety }, new StructuralCaveat(StructuralCaveatKind.HingedByCords)]
                : [new StructuralCaveat(StructuralCaveatKind.ElbowOverLeg) { Safety = safety }, new StructuralCaveat(StructuralCaveatKind.JointStiffness)],
            "Gere2009",
            "columns, critical loads");
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
            LegLabels(studio.Frame),
            lean.ToUnit(UnitsNet.Units.LengthUnit.Millimeter),
            limit.ToUnit(UnitsNet.Units.LengthUnit.Millimeter),
            lean / limit,
            [new StructuralCaveat(StructuralCaveatKind.JointStiffness), new StructuralCaveat(StructuralCaveatKind.FiftiethOfHeight)],
            "Derived",
            "work of the push = energy in the joints and the bent legs");
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
            [new StructuralCaveat(StructuralCaveatKind.WindwardCords) { Safety = studio.WindSafety }, new StructuralCaveat(StructuralCaveatKind.CordsTrip)],
            "Derived",
            "components of a force at 45°");
    }

    private static double LegHeight(FrameResult frame) =>
        frame.PanelHeight.Meters - frame.Feet[0].LevelExtension.Meters;

    private static IReadOnlyList<string> LegLabels(FrameResult frame) =>
        [.. frame.Members.Where(member => member.Role == FrameMemberRole.Leg).Select(member => member.Label)];
}
