using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>Checks of tipping and sliding, for wind from the four sides.</summary>
internal static class WindChecks
{
    private const double SafetyFactor = 1.5;

    public static IEnumerable<StructuralCheck> Of(StudioCheckCase studio)
    {
        var worst = Worst(studio);
        var ratio = worst.Safety is { } safety ? SafetyFactor / safety : 0;
        yield return new StructuralCheck(
            "Tipping in the gust",
            worst.Overturning * SafetyFactor,
            worst.Holding,
            ratio,
            ["The gust is taken at full strength at panel height, with a safety factor of 1.5 and no lift under the panel."],
            "NASA-Drag",
            "drag equation; moments about the feet",
            ratio > 1 ? FormattableString.Invariant(
                $"Hang {worst.BallastAtCentre.Kilograms:0.0} kg under the middle, or put {worst.BallastAtWindwardFeet.Kilograms:0.0} kg on the windward feet.") : "");

        var slide = worst.SlidingSafety is { } grip ? SafetyFactor / grip : 0;
        yield return new StructuralCheck(
            "Sliding in the gust",
            worst.Force * SafetyFactor,
            Force.FromNewtons(studio.Friction * studio.StandingMass.Kilograms * PanelSag.Gravity),
            slide,
            ["Friction between feet and ground is a guess; pegs are better."],
            "NASA-Drag",
            "drag equation; friction",
            slide > 1 ? FormattableString.Invariant($"Add {worst.BallastAgainstSliding.Kilograms:0.0} kg or peg the feet.") : "");
    }

    /// <summary>The wind direction with the least safety against tipping.</summary>
    public static WindTippingResult Worst(StudioCheckCase studio)
    {
        var (front, back) = Arms(studio);
        var half = studio.Frame.BaseWidth.Meters / 2;
        var along = Surfaces(studio, point => point.Back, studio.PanelWidth, true);
        var across = Surfaces(studio, point => point.Right, studio.PanelDepth, false);
        return new[] { Tip(studio, along, back, front), Tip(studio, along, front, back), Tip(studio, across, half, half) }
            .MinBy(result => result.Safety ?? double.MaxValue)!;
    }

    private static WindTippingResult Tip(StudioCheckCase studio, List<WindSurface> surfaces, double leeward, double windward) =>
        WindTipping.Of(new WindTippingCase(
            studio.Gust, surfaces, studio.StandingMass, Length.FromMeters(leeward), Length.FromMeters(windward), studio.Friction, SafetyFactor));

    // Mass centre to the front and rear feet: pipe and swept sheet lie behind the flat panel's centre, everything else under it.
    private static (double Front, double Back) Arms(StudioCheckCase studio)
    {
        var joints = studio.Frame.Feet.Count > 0
            ? studio.Frame.Feet.Select(foot => foot.Position.Back / 1000).ToList()
            : [.. studio.Frame.Joints.Select(joint => joint.Position.Back / 1000)];
        var places = studio.Frame.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
        var pipe = studio.Frame.Members.Sum(member =>
            PipeMass.PerMetre(studio.Pipe) * member.CutLength.Meters * (places[member.From].Back + places[member.To].Back) / 2000);
        var centre = (pipe + SheetMoment(studio)) / studio.StandingMass.Kilograms;
        return (Math.Max(1e-3, centre - joints.Min()), Math.Max(1e-3, joints.Max() - centre));
    }

    private static double SheetMoment(StudioCheckCase studio)
    {
        if (studio.SweepRadius is not { } radius)
        {
            return 0;
        }

        var arc = studio.Frame.SheetLength.Meters - studio.PanelDepth.Meters;
        var angle = arc / radius.Meters;
        var mean = (studio.PanelDepth.Meters / 2) + (angle > 0 ? radius.Meters * (1 - Math.Cos(angle)) / angle : 0);
        return studio.Sheet.Density.KilogramsPerCubicMeter * studio.Sheet.Thickness.Meters * studio.PanelWidth.Meters * arc * mean;
    }

    private static List<WindSurface> Surfaces(StudioCheckCase studio, Func<FramePoint, double> downwind, Length breadth, bool sweepCatches)
    {
        var height = studio.Frame.PanelHeight.Meters;
        var surfaces = studio.Frame.Members.Select(member => PipeSurface(studio, member, downwind)).ToList();
        surfaces.Add(new WindSurface("panel edge", breadth.Meters * studio.Sheet.Thickness.Meters, Wind.PlateDrag, height));
        var skirt = studio.SkirtHeight.Meters;
        surfaces.Add(new WindSurface("skirt", breadth.Meters * skirt, Wind.PlateDrag, Math.Max(0, height - (skirt / 2))));
        if (sweepCatches && studio.SweepRadius is { } radius)
        {
            var angle = (studio.Frame.SheetLength - studio.PanelDepth) / radius;
            var rise = radius.Meters * (1 - Math.Cos(angle));
            surfaces.Add(new WindSurface("swept sheet", breadth.Meters * rise, Wind.PlateDrag, height + (rise / 2)));
        }

        return surfaces;
    }

    private static WindSurface PipeSurface(StudioCheckCase studio, FrameMember member, Func<FramePoint, double> downwind)
    {
        var from = studio.Frame.Joints.First(joint => joint.Label == member.From).Position;
        var to = studio.Frame.Joints.First(joint => joint.Label == member.To).Position;
        var way = to - from;
        var acrossWind = Math.Sqrt(Math.Max(0, way.Dot(way) - Math.Pow(downwind(way), 2))) / 1000;
        return new WindSurface(
            member.Label, acrossWind * studio.Pipe.OutsideDiameter.Meters, Wind.PipeDrag, (from.Up + to.Up) / 2000);
    }
}
