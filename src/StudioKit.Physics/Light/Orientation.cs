using UnitsNet;

namespace StudioKit.Physics.Light;

/// <summary>How a flat thing lies in space: its width, its height and the way its front faces, at right angles.</summary>
public readonly record struct Orientation
{
    private Orientation(Direction across, Direction along, Direction axis) => (Across, Along, Axis) = (across, along, axis);

    /// <summary>Facing straight up, its width to the camera's right.</summary>
    public static Orientation FacingUp { get; } = new(Direction.Right, Direction.Back, Direction.Up);

    /// <summary>Direction of the width.</summary>
    public Direction Across { get; }

    /// <summary>Direction of the height.</summary>
    public Direction Along { get; }

    /// <summary>Direction that the front faces.</summary>
    public Direction Axis { get; }

    /// <summary>Facing up, then tilted.</summary>
    /// <param name="tilt">Angle of the axis from straight up.</param>
    /// <param name="towards">Compass of the tilt: 0 leans to the camera's right, 90° away from the camera.</param>
    /// <exception cref="ArgumentOutOfRangeException">An angle is not finite.</exception>
    public static Orientation Tilted(Angle tilt, Angle towards)
    {
        var (sin, cos) = Math.SinCos(Guard.Finite(towards.Radians, nameof(towards)));
        return FacingUp.Turned(Direction.Of(-sin, cos, 0), Guard.Finite(tilt.Radians, nameof(tilt)));
    }

    /// <summary>Tilted from straight up, the shortest way, until the axis points at a place.</summary>
    /// <param name="from">Centre of the front.</param>
    /// <param name="target">Place that the axis passes through.</param>
    /// <exception cref="ArgumentOutOfRangeException">The two places coincide.</exception>
    public static Orientation AimedAt(Position from, Position target)
    {
        var axis = Direction.From(from, target);
        return Tilted(
            Angle.FromRadians(Math.Acos(Math.Clamp(axis.Z, -1, 1))), Angle.FromRadians(Math.Atan2(axis.Y, axis.X)));
    }

    private Orientation Turned(Direction pivot, double angle) => new(
        Across.TurnedAbout(pivot, angle), Along.TurnedAbout(pivot, angle), Axis.TurnedAbout(pivot, angle));
}
