using StudioKit.Physics.Light.Views;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Covers;

/// <summary>Lamps that the camera sees mirrored in a cover.</summary>
/// <remarks>
/// Each lamp is looked at in points over its front; a point shows where a wall throws its light to the entrance pupil and the frame takes that place in. Walls that lie
/// behind others are looked at as if those were not there, as a wall shifts a ray by less than its thickness; light thrown back twice is left out.
/// </remarks>
public static class CoverReflections
{
    private const int PointsAcross = 5;

    /// <summary>Lamps that show in the frame.</summary>
    /// <param name="cover">The cover.</param>
    /// <param name="view">The camera's view; its subject stands in the middle of the cover.</param>
    /// <param name="lamps">The lamps.</param>
    /// <param name="subject">Length of the subject, which may lie any way.</param>
    /// <returns>Those that show, each part of the cover for itself; empty where the view is clear.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    [Source("Derived", "law of reflection at planes, at an upright cylinder and at a sphere (Alhazen's problem, by bisection)")]
    public static IReadOnlyList<CoverReflection> Of(CoverCase cover, CameraView view, IReadOnlyList<CoverLamp> lamps, Length subject)
    {
        ArgumentNullException.ThrowIfNull(cover);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(lamps);
        var rays = new ViewRays(view with { SubjectRight = Length.Zero, SubjectBack = Length.Zero }, 0);
        var surfaces = CoverSurface.Of(cover);
        return [.. lamps.SelectMany((lamp, place) => surfaces.Select(surface => Seen(surface, rays, place, lamp, (view, subject.Meters))).OfType<CoverReflection>())];
    }

    private static CoverReflection? Seen(CoverSurface surface, ViewRays rays, int place, CoverLamp lamp, (CameraView View, double Subject) of)
    {
        var (count, right, up, onSubject) = (0, 0.0, 0.0, false);
        foreach (var point in Points(lamp))
        {
            foreach (var mirror in surface.Mirrors(point, rays.Pupil))
            {
                if (rays.PlaceOf(mirror) is { } at && Math.Abs(at.Right) <= 0.5 && Math.Abs(at.Up) <= 0.5)
                {
                    (count, right, up) = (count + 1, right + at.Right, up + at.Up);
                    onSubject |= double.Hypot(at.Right * of.View.FieldWidth.Meters, at.Up * of.View.FieldHeight.Meters) <= of.Subject / 2;
                }
            }
        }

        return count == 0 ? null : new CoverReflection(place, surface.Face, right / count, up / count, onSubject);
    }

    private static IEnumerable<Position> Points(CoverLamp lamp)
    {
        var axis = Direction.From(new Position(0, 0, 0), lamp.At);
        var across = Math.Abs(axis.Z) < 0.999 ? axis.Cross(Direction.Up) : Direction.Right;
        var up = across.Cross(axis);
        var (width, height) = (lamp.Width.Meters > 0 ? PointsAcross : 1, lamp.Height.Meters > 0 ? PointsAcross : 1);
        for (var i = 0; i < width * height; i++)
        {
            yield return lamp.At
                .Along(across, Share(i % width, width) * lamp.Width.Meters)
                .Along(up, Share(i / width, height) * lamp.Height.Meters);
        }
    }

    private static double Share(int i, int count) => count == 1 ? 0 : ((double)i / (count - 1)) - 0.5;
}
