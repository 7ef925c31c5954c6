using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Views;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Covers;

/// <summary>How a camera sees a subject in a cover, and the sheet behind it.</summary>
public static class CoverView
{
    // Far enough for any line of sight to have left a cover [m].
    private const double Beyond = 10;
    private const int PointsAcross = 3;
    private const int FootPoints = 24;

    /// <summary>Looks through a cover.</summary>
    /// <param name="cover">The cover, with the subject in its middle.</param>
    /// <param name="view">The camera's view.</param>
    /// <param name="sheet">The lit sheet; none where there is none.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    [Source("BornWolf1999", "Fresnel formulae and law of refraction, §1.5, at every face in the way")]
    public static CoverSight Of(CoverCase cover, CameraView view, SheetAround? sheet = null)
    {
        ArgumentNullException.ThrowIfNull(cover);
        ArgumentNullException.ThrowIfNull(view);
        var rays = new ViewRays(view with { SubjectRight = Length.Zero, SubjectBack = Length.Zero }, 0);
        var aim = new Position(0, 0, view.SubjectHeight.Meters);
        var seen = cover.HoldsWater ? InWater(cover, view, aim) : InAir(cover, rays, aim);
        return seen with
        {
            ShowsFoot = Foot(cover).Any(at => rays.PlaceOf(at) is { } place && Math.Abs(place.Right) <= 0.5 && Math.Abs(place.Up) <= 0.5),
            SheetMirrored = sheet is null ? 0 : Mirrored(cover, rays.Pupil, aim, sheet),
        };
    }

    private static CoverSight InAir(CoverCase cover, ViewRays rays, Position aim)
    {
        var losses = Rays(rays).Select(ray => StopsOf(CoverPath.Transmittance(cover, OnSheet(rays.Pupil, ray), rays.Pupil))).ToList();
        var sight = new CoverSight { SheetLoss = new Stops(losses.Max()), LeastSheetLoss = new Stops(losses.Min()) };
        var crossings = CoverPath.Crossings(cover, rays.Pupil, aim);
        if (crossings.Count == 0)
        {
            return sight;
        }

        var first = crossings[0];
        var normal = first.At.DistanceTo(aim) * Math.Cos(first.Incidence);
        var wall = Math.Min(cover.Wall.Meters, normal);
        return Through(sight, first, [new WindowLayer(wall, cover.RefractiveIndex), new WindowLayer(normal - wall, 1)]) with
        {
            SubjectLoss = new Stops(StopsOf(CoverPath.Transmittance(cover, aim, rays.Pupil))),
        };
    }

    // The line of sight comes through the surface where it leaves the water within the walls, or through the front wall where it does so under water; where either can be, as the camera
    // stands higher or lower, through the one that it meets more squarely, which draws less apart.
    private static CoverSight InWater(CoverCase cover, CameraView view, Position aim)
    {
        var (down, level) = (Math.Max(0, (Math.PI / 2) - view.Pitch.Radians), Math.Min(view.Pitch.Radians, (Math.PI / 2) - 1e-6));
        var (surface, front) = (CoverWindow.Behind(cover, CoverFace.Water, aim), CoverWindow.Behind(cover, CoverFace.Front, aim));
        var half = cover.Depth.Meters / 2;
        var slope = Math.Tan(Math.Asin(Math.Sin(level) / RefractiveIndex.Water));
        var throughFront = aim.Z + (half * slope) < cover.Water.Meters;
        if ((!throughFront || down <= level) && down < (Math.PI / 2) - 1e-6 && LayeredWindow.Run(surface, down) is var run && run < half)
        {
            var dryWall = run + ((cover.Height - cover.Water).Meters * Math.Tan(down)) > half ? ClearWall.Transmittance(cover.RefractiveIndex, level) : 1;
            var leaving = dryWall * ClearWall.Transmittance(1, down, RefractiveIndex.Water);
            return Out(cover, CoverFace.Water, surface, down, (leaving, leaving * ClearWall.Transmittance(cover.RefractiveIndex, down, RefractiveIndex.Water)));
        }

        if (!throughFront)
        {
            return new CoverSight();
        }

        var wall = ClearWall.Transmittance(cover.RefractiveIndex, level, RefractiveIndex.Water);
        var cosine = 1 / Math.Sqrt(1 + (slope * slope));
        return Out(cover, CoverFace.Front, front, level, (wall, wall * wall)) with
        {
            BottomMirrors = half * slope > aim.Z && RefractiveIndex.Water * cosine > 1,
        };
    }

    private static CoverSight Out(CoverCase cover, CoverFace face, IReadOnlyList<WindowLayer> layers, double incidence, (double Subject, double Sheet) share) =>
        Through(new CoverSight(), new CoverCrossing(face, default, incidence), layers) with
        {
            SubjectLoss = new Stops(StopsOf(share.Subject)) + CoverLighting.SpreadByWater(cover),
            SheetLoss = new Stops(StopsOf(share.Sheet)),
            LeastSheetLoss = new Stops(StopsOf(share.Sheet)),
        };

    private static CoverSight Through(CoverSight sight, CoverCrossing first, IReadOnlyList<WindowLayer> layers)
    {
        var incidence = Math.Min(first.Incidence, (Math.PI / 2) - 1e-6);
        return sight with
        {
            Face = first.Face,
            Incidence = Angle.FromRadians(incidence).ToUnit(UnitsNet.Units.AngleUnit.Degree),
            SeemingDistance = Length.FromMeters(LayeredWindow.ApparentLength(layers, incidence)),
            Distance = Length.FromMeters(LayeredWindow.RayLength(layers, incidence)),
            AstigmaticDifference = Length.FromMeters(LayeredWindow.AstigmaticDifference(layers, incidence)),
        };
    }

    // The line of sight turned back at the first part of the cover that it meets: what it sees there lies over the subject.
    private static double Mirrored(CoverCase cover, Position pupil, Position aim, SheetAround sheet)
    {
        if (CoverPath.Crossings(cover, pupil, aim) is not [var first, ..])
        {
            return 0;
        }

        var normal = CoverSurface.Of(cover).First(surface => surface.Face == first.Face).NormalAt(first.At);
        var sight = Direction.From(pupil, aim);
        var twice = 2 * sight.Dot(normal);
        var down = sight.Z - (twice * normal.Z);
        if (down >= 0)
        {
            return 0;
        }

        var reach = first.At.Z / -down;
        var (x, y) = (first.At.X + (reach * (sight.X - (twice * normal.X))), first.At.Y + (reach * (sight.Y - (twice * normal.Y))));
        return Math.Abs(x) <= sheet.Aside.Meters && y >= -sheet.Front.Meters && y <= sheet.Back.Meters
            ? ClearWall.Reflectance(first.Face == CoverFace.Water ? 1 : cover.RefractiveIndex, first.Incidence, cover.Inside)
            : 0;
    }

    private static IEnumerable<Direction> Rays(ViewRays rays) =>
        Enumerable.Range(0, PointsAcross * PointsAcross).Select(i => rays.Through(((i % PointsAcross) / (PointsAcross - 1.0)) - 0.5, ((i / PointsAcross) / (PointsAcross - 1.0)) - 0.5));

    private static Position OnSheet(Position pupil, Direction ray) => pupil.Along(ray, ray.Z < 0 ? Math.Min(Beyond, pupil.Z / -ray.Z) : Beyond);

    private static IEnumerable<Position> Foot(CoverCase cover)
    {
        var (right, back) = (cover.OuterWidth.Meters / 2, cover.OuterDepth.Meters / 2);
        return Enumerable.Range(0, FootPoints).SelectMany(i => cover.Shape is CoverShape.RoundTub or CoverShape.Dome
            ? [new Position(right * Math.Cos(Math.Tau * i / FootPoints), right * Math.Sin(Math.Tau * i / FootPoints), 0)]
            : (IEnumerable<Position>)[At(i, -back), At(i, back), Beside(i, -right), Beside(i, right)]);

        Position At(int i, double y) => new(right * ((2.0 * i / (FootPoints - 1)) - 1), y, 0);
        Position Beside(int i, double x) => new(x, back * ((2.0 * i / (FootPoints - 1)) - 1), 0);
    }

    private static double StopsOf(double share) => -Math.Log2(Math.Max(share, 1e-9));
}
