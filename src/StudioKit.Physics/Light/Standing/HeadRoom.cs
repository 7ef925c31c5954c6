using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Standing;

/// <summary>Whether a flash with what is before it has room where it stands.</summary>
public static class HeadRoom
{
    /// <summary>Lowest part of a box over the ground.</summary>
    /// <param name="box">The box.</param>
    /// <returns>Height [m]; negative under the ground.</returns>
    [Source("Derived", "extent of a turned box")]
    public static double Lowest(BoxObstacle box)
    {
        ArgumentNullException.ThrowIfNull(box);
        return FrameIntrusion.SurfaceOf(box.Hull).Min(place => place.Z);
    }

    /// <summary>Whether a box reaches under a level sheet's top within the sheet's edges.</summary>
    /// <param name="box">The box.</param>
    /// <param name="sheet">Height of the sheet [m].</param>
    /// <param name="width">Sheet across the view [m]; &gt; 0.</param>
    /// <param name="front">Front edge of the sheet, y [m].</param>
    /// <param name="back">Back edge of the sheet, y [m].</param>
    [Source("Derived", "extent of a turned box")]
    public static bool ReachesSheet(BoxObstacle box, double sheet, double width, double front, double back)
    {
        ArgumentNullException.ThrowIfNull(box);
        return FrameIntrusion.SurfaceOf(box.Hull).Any(place => place.Z < sheet && Math.Abs(place.X) < Guard.Positive(width) / 2 && place.Y > front && place.Y < back);
    }

    /// <summary>Whether a box and a pipe touch.</summary>
    /// <param name="box">The box.</param>
    /// <param name="pipe">The pipe.</param>
    /// <remarks>The box is taken larger by the pipe's radius on every side, corners left square, so it may call a near miss a touch.</remarks>
    [Source("Derived", "segment against a box grown by the pipe's radius")]
    public static bool Touches(BoxObstacle box, PipeObstacle pipe)
    {
        ArgumentNullException.ThrowIfNull(box);
        ArgumentNullException.ThrowIfNull(pipe);
        Length Grown(double half) => Length.FromMeters(2 * half) + pipe.Diameter;
        var half = box.Hull.Half;
        return new BoxObstacle(box.Centre, box.Orientation, Grown(half.Across), Grown(half.Along), Grown(half.Axis)).Blocks(pipe.Start, pipe.End);
    }

    /// <summary>Whether a box and a lens touch.</summary>
    /// <param name="box">The box.</param>
    /// <param name="barrel">The lens.</param>
    [Source("Derived", "points of a box's faces within a cylinder, and of a cylinder within the box")]
    public static bool Touches(BoxObstacle box, BarrelObstacle barrel)
    {
        ArgumentNullException.ThrowIfNull(box);
        ArgumentNullException.ThrowIfNull(barrel);
        return FrameIntrusion.SurfaceOf(box.Hull).Any(barrel.Holds) || box.Blocks(barrel.Front, barrel.Back);
    }

    /// <summary>Nearest part of a box to a point.</summary>
    /// <param name="box">The box.</param>
    /// <param name="point">The point, outside the box.</param>
    /// <returns>Distance [m], to the nearest of a lattice of points on the box's faces.</returns>
    [Source("Derived", "points of a box's faces")]
    public static double Distance(BoxObstacle box, Position point)
    {
        ArgumentNullException.ThrowIfNull(box);
        return FrameIntrusion.SurfaceOf(box.Hull).Min(place => place.DistanceTo(point));
    }
}
