using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Structure.Checks;

/// <summary>Checks of the rail with the longest span.</summary>
internal static class RailChecks
{
    private const double RailSagShare = 0.005;

    public static IEnumerable<StructuralCheck> Of(StudioCheckCase studio, PipeWarmth warmth)
    {
        var rail = LongestRail(studio.Frame);
        yield return RailSag(studio, warmth, rail);
        yield return RailStress(studio, warmth, rail);
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

    private static (double First, double Second) LineOf(FrameMember member, Dictionary<string, FramePoint> places)
    {
        var place = places[member.From];
        return member.Role == FrameMemberRole.CrossRail ? (Math.Round(place.Back, 6), 0) : (Math.Round(place.Right, 6), 0);
    }

    public static double PanelWeight(StudioCheckCase studio) =>
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
            [new StructuralCaveat(StructuralCaveatKind.HalfPanelOnRail), new StructuralCaveat(StructuralCaveatKind.TwoHundredthOfSpan)],
            "Gere2009",
            "deflections of simple beams");
    }

    private static StructuralCheck RailStress(StudioCheckCase studio, PipeWarmth warmth, RailSpan rail)
    {
        var span = rail.Metres;
        var modulus = PipeSection.Modulus(studio.Pipe.OutsideDiameter.Meters, studio.Pipe.Wall.Meters);
        var moment = (Guard.NonNegative(studio.Elbow.Newtons, nameof(studio.Elbow)) * span / 4)
            + ((PanelWeight(studio) + (studio.Subject.Kilograms * PanelSag.Gravity)) * span / 16);
        var stress = Pressure.FromPascals(moment / modulus);
        var capacity = studio.Pipe.Strength * warmth.StrengthFactor / Guard.Between(studio.StrengthSafety, 1, double.MaxValue, nameof(studio.StrengthSafety));
        var dip = Length.FromMeters(BeamBending.SupportedCentral(studio.Elbow.Newtons, span, warmth.Stiffness));
        return new StructuralCheck(
            StructuralCheckKind.RailStress,
            rail.Labels,
            stress.ToUnit(UnitsNet.Units.PressureUnit.Megapascal),
            capacity.ToUnit(UnitsNet.Units.PressureUnit.Megapascal),
            stress / capacity,
            [new StructuralCaveat(StructuralCaveatKind.RailUnderElbow) { Safety = studio.StrengthSafety, Size = dip }],
            "PPFA-UB3",
            "strength against temperature");
    }
}
