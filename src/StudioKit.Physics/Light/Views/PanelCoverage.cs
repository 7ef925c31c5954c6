using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Views;

/// <summary>How large the panel must be, so that no framing at any camera angle sees past it.</summary>
public static class PanelCoverage
{
    private const int PointsPerEdge = 24;

    /// <summary>The smallest rectangle, square to the camera's view, that fills every frame, with a margin.</summary>
    /// <remarks>
    /// A ray that leaves downwards meets the flat sheet at aim + ray·(height/fall). Where one meets it further back than
    /// <paramref name="deepestFlat"/>, or rises, the sheet is swept up behind the subject with the smallest radius it bends to cold, unless another
    /// sheet stands on it before that (<see cref="CameraView.EndsBehind"/>), up to which it reaches then.
    /// Views are taken with the subject's foot at one place, so their <see cref="CameraView.SubjectRight"/> and
    /// <see cref="CameraView.SubjectBack"/> count from there.
    /// </remarks>
    /// <param name="views">Every framing at every camera angle.</param>
    /// <param name="margin">Sheet kept beyond the visible field on every side; ≥ 0 m.</param>
    /// <param name="deepestFlat">Longest flat panel accepted, front to back; &gt; 0 m.</param>
    /// <param name="coldBendRadius">Smallest radius that the sheet bends to cold; &gt; 0 m.</param>
    /// <param name="flatBehindSubject">Flat sheet kept behind the subject before an arc begins; ≥ 0 m.</param>
    /// <exception cref="ArgumentException">There is no view, or one is impossible; <see cref="SceneCheck"/> says beforehand how.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    [Source("Derived", "rays through the frames' edges cut with the plane of the sheet, or with an arc tangent to it")]
    public static PanelCoverageResult Smallest(
        IReadOnlyList<CameraView> views, Length margin, Length deepestFlat, Length coldBendRadius, Length flatBehindSubject)
    {
        ArgumentNullException.ThrowIfNull(views);
        SceneCheck.Refuse([.. views.SelectMany(view => ViewCheck.Problems(Endless, view))]);
        ArgumentOutOfRangeException.ThrowIfZero(views.Count, nameof(views));
        return TrySmallest(views, margin, deepestFlat, coldBendRadius, flatBehindSubject)
            ?? throw new ArgumentException("A framing looks up over any panel.", nameof(views));
    }

    /// <summary>The same, or none where no one panel fills every frame: a framing is impossible or looks up over any panel.</summary>
    /// <inheritdoc cref="Smallest" path="/param"/>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    [Source("Derived", "rays through the frames' edges cut with the plane of the sheet, or with an arc tangent to it")]
    public static PanelCoverageResult? TrySmallest(
        IReadOnlyList<CameraView> views, Length margin, Length deepestFlat, Length coldBendRadius, Length flatBehindSubject)
    {
        ArgumentNullException.ThrowIfNull(views);
        Guard.NonNegative(margin.Meters, nameof(margin));
        Guard.Positive(deepestFlat.Meters, nameof(deepestFlat));
        Guard.Positive(coldBendRadius.Meters, nameof(coldBendRadius));
        Guard.NonNegative(flatBehindSubject.Meters, nameof(flatBehindSubject));
        return views.Count == 0 || views.SelectMany(view => ViewCheck.Problems(Endless, view)).Any()
            ? null
            : Cover([.. views.SelectMany(BorderRays)], margin.Meters, deepestFlat.Meters, coldBendRadius.Meters, flatBehindSubject.Meters);
    }

    private static LightPanel Endless { get; } = new()
    {
        Width = Length.FromMeters(1e6),
        Depth = Length.FromMeters(1e6),
        Height = Length.FromMeters(1),
    };

    private static PanelCoverageResult? Cover(
        IReadOnlyList<SheetRay> rays, double margin, double deepest, double radius, double flatBehind)
    {
        var flat = PanelExtent.Of(rays, ray => ray.Within(MeetPlane(ray.Pupil, ray.Ray)));
        if (flat is { } extent && extent.Back - extent.Front + (2 * margin) <= deepest)
        {
            return Result(extent, margin, null, 0, []);
        }

        var swept = PanelExtent.Of(rays, ray => ray.Within(MeetArc(ray.Pupil, ray.Ray, flatBehind, radius)));
        return swept is { } bent
            ? Result(bent, margin, radius, Math.Max(0, bent.Back + margin - flatBehind), SweepCaveats(bent, radius, flatBehind))
            : null;
    }

    private static PanelCoverageResult Result(
        PanelExtent extent, double margin, double? radius, double arc, IReadOnlyList<string> caveats) => new(
        Length.FromMeters(extent.Right - extent.Left + (2 * margin)),
        Length.FromMeters(extent.Back - extent.Front + (2 * margin)),
        Length.FromMeters(margin - extent.Left),
        Length.FromMeters(margin - extent.Front),
        radius is { } metres ? Length.FromMeters(metres) : null,
        Length.FromMeters(arc),
        caveats);

    private static string[] SweepCaveats(PanelExtent extent, double radius, double flatBehind)
    {
        var turn = (extent.Back - flatBehind) / radius * 180 / Math.PI;
        return [FormattableString.Invariant(
            $"A flat panel cannot fill the lowest framing: sweep its back up through {turn:0}° with a radius of at least {1000 * radius:0} mm.")];
    }

    private static (double X, double S)? MeetPlane(Position pupil, Direction ray)
    {
        const double Horizon = -1e-6;
        return ray.Z < Horizon ? (pupil.X - (ray.X * pupil.Z / ray.Z), pupil.Y - (ray.Y * pupil.Z / ray.Z)) : null;
    }

    // Flat up to where the arc begins, then the arc, at most a quarter turn; s counts along the sheet from the subject's foot.
    private static (double X, double S)? MeetArc(Position pupil, Direction ray, double start, double radius)
    {
        if (MeetPlane(pupil, ray) is { } flat && flat.S <= start)
        {
            return flat;
        }

        var depth = 2 * (Math.Abs(start) + (radius * Math.PI / 2));
        var surface = new PanelSurface(new LightPanel
        {
            Width = Length.FromMeters(1e6),
            Depth = Length.FromMeters(depth),
            Height = Length.FromMeters(1),
            SweepRadius = Length.FromMeters(radius),
            SweptLength = Length.FromMeters(radius * Math.PI / 2),
        });
        var shifted = pupil with { Y = pupil.Y - start + surface.SweepStartY, Z = pupil.Z + 1 };
        return surface.TryMeet(shifted, ray, out var place)
            ? (place.X, place.S - (surface.Depth - surface.SweptLength) + start)
            : null;
    }

    private static IEnumerable<SheetRay> BorderRays(CameraView view)
    {
        var rays = new ViewRays(view, 0);
        for (var i = 0; i < 4 * PointsPerEdge; i++)
        {
            var share = ((double)(i % PointsPerEdge) / PointsPerEdge) - 0.5;
            var (right, up) = (i / PointsPerEdge) switch { 0 => (-0.5, share), 1 => (share, 0.5), 2 => (0.5, -share), _ => (-share, -0.5) };
            yield return new SheetRay(rays.Pupil, rays.Through(right, up), view.SubjectBack.Meters + view.EndsBehind?.Meters);
        }
    }
}
