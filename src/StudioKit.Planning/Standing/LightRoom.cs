using StudioKit.Physics;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Obstacles;
using UnitsNet;

namespace StudioKit.Planning.Standing;

/// <summary>What stands about the subject: the level that it sits on, and sheet and frame where it sits on the panel.</summary>
/// <param name="Level">Height over the ground of what the subject sits on [m].</param>
/// <param name="SubjectBack">Subject's foot beyond the middle of the studio [m].</param>
/// <param name="Sheet">The sheet; none where the subject sits on none.</param>
/// <param name="Pipes">Pipes of the frame.</param>
internal sealed record LightRoom(double Level, double SubjectBack, LightPanel? Sheet, ValueList<PipeObstacle> Pipes)
{
    // What is fastened to a post, or stands beside the frame, keeps this much clear of it (common practice, no source).
    private const double Clear = 0.03;

    /// <summary>Off the panel.</summary>
    public static LightRoom Outdoors(Length overGround) => new(overGround.Meters, 0, null, []);

    /// <summary>Front and back edge of the sheet's flat part, y [m].</summary>
    public (double Front, double Back) Edges => Sheet is { } sheet ? (-sheet.Depth.Meters / 2, (sheet.Depth.Meters / 2) - sheet.SweptLength.Meters) : (0, 0);

    /// <summary>How far out from a place a post must stand to be clear of frame and sheet [m]; 0 where it is.</summary>
    /// <param name="place">The place.</param>
    /// <param name="outward">Level direction away from the subject.</param>
    public double ToClearFrame(Position place, Direction outward)
    {
        if (Sheet is null)
        {
            return 0;
        }

        var (half, front, back) = (
            Math.Max(Sheet.Width.Meters / 2, Pipes.Select(pipe => Math.Max(Math.Abs(pipe.Start.X), Math.Abs(pipe.End.X))).DefaultIfEmpty(0).Max()) + Clear,
            Math.Min(Edges.Front, Pipes.Select(pipe => Math.Min(pipe.Start.Y, pipe.End.Y)).DefaultIfEmpty(0).Min()) - Clear,
            Math.Max(Sheet.Depth.Meters / 2, Pipes.Select(pipe => Math.Max(pipe.Start.Y, pipe.End.Y)).DefaultIfEmpty(0).Max()) + Clear);
        return Math.Abs(place.X) >= half || place.Y <= front || place.Y >= back
            ? 0
            : Math.Min(Exit(place.X, outward.X, -half, half), Exit(place.Y, outward.Y, front, back));
    }

    private static double Exit(double at, double step, double least, double most) => step switch
    {
        > 1e-9 => (most - at) / step,
        < -1e-9 => (least - at) / step,
        _ => double.PositiveInfinity,
    };
}
