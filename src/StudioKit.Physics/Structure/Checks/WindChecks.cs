using StudioKit.Physics.Structure.Frames;
using StudioKit.Physics.Structure.Uprights;
using UnitsNet;

namespace StudioKit.Physics.Structure.Checks;

/// <summary>Checks of tipping and sliding, for wind from the four sides.</summary>
internal static class WindChecks
{
    public static IEnumerable<StructuralCheck> Of(StudioCheckCase studio)
    {
        var winds = Winds(studio);
        yield return Tipping(studio, LeastSafe(winds));
        yield return Sliding(studio, winds.MinBy(result => result.SlidingSafety ?? double.MaxValue)!);
    }

    /// <summary>The wind direction with the least safety against tipping.</summary>
    public static WindTippingResult Worst(StudioCheckCase studio) => LeastSafe(Winds(studio));

    private static WindTippingResult LeastSafe(IReadOnlyList<WindTippingResult> winds) =>
        winds.MinBy(result => result.Safety ?? double.MaxValue)!;

    private static StructuralCheck Tipping(StudioCheckCase studio, WindTippingResult worst)
    {
        var ratio = worst.Safety is { } safety ? studio.WindSafety / safety : 0;
        return new StructuralCheck(
            StructuralCheckKind.Tipping,
            [],
            worst.Overturning * studio.WindSafety,
            worst.Holding,
            ratio,
            [new StructuralCaveat(StructuralCaveatKind.GustAtPanelHeight) { Safety = studio.WindSafety }, .. PegCaveats(studio)],
            "NASA-Drag",
            "drag equation; moments about the feet",
            ratio > 1 ? Ballast(StructuralRemedyKind.BallastAgainstTipping, worst.BallastAtCentre, worst.BallastAtWindwardFeet, studio) : null);
    }

    private static StructuralCheck Sliding(StudioCheckCase studio, WindTippingResult worst)
    {
        var ratio = worst.SlidingSafety is { } grip ? studio.WindSafety / grip : 0;
        return new StructuralCheck(
            StructuralCheckKind.Sliding,
            [],
            worst.Force * studio.WindSafety,
            worst.Force * (worst.SlidingSafety ?? 0),
            ratio,
            [new StructuralCaveat(StructuralCaveatKind.Friction), .. PegCaveats(studio)],
            "NASA-Drag",
            "drag equation; friction",
            ratio > 1 ? Ballast(StructuralRemedyKind.BallastAgainstSliding, worst.BallastAgainstSliding, null, studio) : null);
    }

    private static IEnumerable<StructuralCaveat> PegCaveats(StudioCheckCase studio) =>
        studio.Pegs == 0 ? [] : [new StructuralCaveat(StructuralCaveatKind.PegHold)];

    private static StructuralRemedy Ballast(StructuralRemedyKind kind, Mass underMiddle, Mass? onWindwardFeet, StudioCheckCase studio) =>
        new(kind) { Ballast = BallastNeed.Covering(underMiddle, onWindwardFeet, studio.Ballast) };

    private static IReadOnlyList<WindTippingResult> Winds(StudioCheckCase studio)
    {
        var (front, back) = Arms(studio);
        var half = studio.Frame.BaseWidth.Meters / 2;
        var along = Surfaces(studio, point => point.Back, studio.PanelWidth, true);
        var across = Surfaces(studio, point => point.Right, studio.PanelDepth, false);
        return [Tip(studio, along, back, front), Tip(studio, along, front, back), Tip(studio, across, half, half)];
    }

    private static WindTippingResult Tip(StudioCheckCase studio, List<WindSurface> surfaces, double leeward, double windward) =>
        WindTipping.Of(new WindTippingCase(
            studio.Gust,
            surfaces,
            studio.StandingMass + studio.Ballast + SailMass(studio),
            Length.FromMeters(leeward),
            Length.FromMeters(windward),
            studio.Friction,
            studio.WindSafety)
        {
            WindwardPegs = Force.FromNewtons(studio.Pegs / 2 * WindwardHold(studio, leeward + windward)),
            AllPegs = studio.Guyed ? GuyHold(studio) : studio.PegHold * studio.Pegs,
        });

    /// <summary>Push at the top that the windward cords take.</summary>
    public static Force GuyHold(StudioCheckCase studio) =>
        Force.FromNewtons(studio.Pegs / 2 * Guys.SidewaysHold(studio.PegHold.Newtons));

    /// <summary>The hardest push of the wind from any side, with the safety factor.</summary>
    public static Force HardestPush(StudioCheckCase studio) => Winds(studio).Max(result => result.Force) * studio.WindSafety;

    private static double WindwardHold(StudioCheckCase studio, double baseLength) => studio.Guyed
        ? Guys.WindwardHold(studio.PegHold.Newtons, studio.Frame.PanelHeight.Meters, baseLength)
        : studio.PegHold.Newtons;

    // Mass centre to the front and rear feet: pipe and swept sheet lie behind the flat panel's centre, everything else under it.
    private static (double Front, double Back) Arms(StudioCheckCase studio)
    {
        var joints = studio.Frame.Feet.Count > 0
            ? studio.Frame.Feet.Select(foot => foot.Position.Back).ToList()
            : [.. studio.Frame.Joints.Select(joint => joint.Position.Back)];
        var places = studio.Frame.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
        var pipe = studio.Frame.Members.Sum(member =>
            PipeMass.PerMetre(studio.Pipe) * member.CutLength.Meters * (places[member.From].Back + places[member.To].Back) / 2);
        var sail = SailMass(studio).Kilograms * studio.Frame.Joints.Max(joint => joint.Position.Back);
        var centre = (pipe + SheetMoment(studio) + sail) / (studio.StandingMass + studio.Ballast + SailMass(studio)).Kilograms;
        return (Math.Max(1e-3, centre - joints.Min()), Math.Max(1e-3, joints.Max() - centre));
    }

    private static Mass SailMass(StudioCheckCase studio) => studio.Sail?.Mass ?? Mass.Zero;

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

        if (sweepCatches && studio.Sail is { } sail)
        {
            surfaces.Add(new WindSurface(
                "upright sheet", sail.Width.Meters * sail.Height.Meters, SignboardWind.ForceCoefficient, height + sail.LowerEdge.Meters + (sail.Height.Meters / 2)));
            surfaces.Add(new WindSurface("its poles", 2 * sail.LowerEdge.Meters * studio.Pipe.OutsideDiameter.Meters, Wind.PipeDrag, height + (sail.LowerEdge.Meters / 2)));
        }

        return surfaces;
    }

    private static WindSurface PipeSurface(StudioCheckCase studio, FrameMember member, Func<FramePoint, double> downwind)
    {
        var from = studio.Frame.Joints.First(joint => joint.Label == member.From).Position;
        var to = studio.Frame.Joints.First(joint => joint.Label == member.To).Position;
        var way = to - from;
        var acrossWind = Math.Sqrt(Math.Max(0, way.Dot(way) - Math.Pow(downwind(way), 2)));
        return new WindSurface(
            member.Label, acrossWind * studio.Pipe.OutsideDiameter.Meters, Wind.PipeDrag, (from.Up + to.Up) / 2);
    }
}
