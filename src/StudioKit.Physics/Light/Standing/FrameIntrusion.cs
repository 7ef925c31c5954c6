using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Views;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Standing;

/// <summary>Whether a thing that stands about the subject stands in the camera's picture.</summary>
public static class FrameIntrusion
{
    private const int PointsPerSide = 7;

    /// <summary>Whether any part of a box is seen, hidden or not by the subject.</summary>
    /// <param name="box">The box.</param>
    /// <param name="view">The camera's view.</param>
    /// <param name="sheet">Height of the level that the subject stands on [m].</param>
    [Source("Derived", "pyramid from the entrance pupil through the field")]
    public static bool Shows(BoxObstacle box, CameraView view, double sheet)
    {
        ArgumentNullException.ThrowIfNull(box);
        ArgumentNullException.ThrowIfNull(view);
        var rays = new ViewRays(view, Guard.Finite(sheet));
        return SurfaceOf(box.Hull).Any(rays.Holds);
    }

    /// <summary>Whether any part of a straight rod is seen.</summary>
    /// <param name="start">One end.</param>
    /// <param name="end">The other end.</param>
    /// <param name="view">The camera's view.</param>
    /// <param name="sheet">Height of the level that the subject stands on [m].</param>
    [Source("Derived", "pyramid from the entrance pupil through the field")]
    public static bool Shows(Position start, Position end, CameraView view, double sheet)
    {
        ArgumentNullException.ThrowIfNull(view);
        var rays = new ViewRays(view, Guard.Finite(sheet));
        const int pieces = 60;
        return Enumerable.Range(0, pieces + 1).Any(piece => rays.Holds(Position.Between(start, end, (double)piece / pieces)));
    }

    /// <summary>Points all over a box's faces.</summary>
    internal static IEnumerable<Position> SurfaceOf(ObstacleHull hull)
    {
        double[] shares = [.. Enumerable.Range(0, PointsPerSide).Select(i => (2.0 * i / (PointsPerSide - 1)) - 1)];
        return from across in shares
               from along in shares
               from axis in shares
               where Math.Max(Math.Abs(across), Math.Max(Math.Abs(along), Math.Abs(axis))) >= 1
               select hull.Centre.Along(hull.Across, across * hull.Half.Across).Along(hull.Along, along * hull.Half.Along).Along(hull.Axis, axis * hull.Half.Axis);
    }
}
