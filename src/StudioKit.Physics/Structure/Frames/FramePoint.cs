namespace StudioKit.Physics.Structure.Frames;

/// <summary>A point or direction in the frame's space: origin on level ground under the flat panel's centre.</summary>
/// <param name="Right">To the right as the camera sees it [m].</param>
/// <param name="Back">Away from the camera [m].</param>
/// <param name="Up">Up [m].</param>
public readonly record struct FramePoint(double Right, double Back, double Up)
{
    /// <summary>Distance from the origin [m].</summary>
    public double Norm => Math.Sqrt(Dot(this));

    /// <summary>Scalar product with another vector [m²].</summary>
    public double Dot(FramePoint other) => (Right * other.Right) + (Back * other.Back) + (Up * other.Up);

    /// <summary>Adds two vectors.</summary>
    public static FramePoint operator +(FramePoint left, FramePoint right) =>
        new(left.Right + right.Right, left.Back + right.Back, left.Up + right.Up);

    /// <summary>Vector from one point to another.</summary>
    public static FramePoint operator -(FramePoint left, FramePoint right) =>
        new(left.Right - right.Right, left.Back - right.Back, left.Up - right.Up);

    /// <summary>Stretches a vector.</summary>
    public static FramePoint operator *(double factor, FramePoint vector) =>
        new(factor * vector.Right, factor * vector.Back, factor * vector.Up);
}
