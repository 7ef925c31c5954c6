using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>Room between the legs for the body of a flash whose bright window faces up.</summary>
/// <param name="Left">Leftmost that it may reach [m].</param>
/// <param name="Right">Rightmost that it may reach [m].</param>
/// <param name="Front">Nearest to the camera that it may reach [m].</param>
/// <param name="Back">Farthest from the camera that it may reach [m].</param>
public sealed record FlashBodyRoom(double Left, double Right, double Front, double Back)
{
    // Every seven and a half degrees.
    private const int Ways = 48;

    /// <summary>How far a lying body sticks out of the room, the way round that suits it best.</summary>
    /// <param name="flash">The flash; its window is at one end of its body.</param>
    /// <returns>Overhang; nought where it fits some way round, or has no body.</returns>
    /// <exception cref="ArgumentNullException">There is no flash.</exception>
    /// <remarks>The window's middle lies half the head from the body's end; the body may be turned round it, every 7.5°.</remarks>
    [Source("Derived", "turned rectangle in a rectangle")]
    public Length Outside(FlashCradleCase flash)
    {
        ArgumentNullException.ThrowIfNull(flash);
        if (flash.BodyLength <= Length.Zero)
        {
            return Length.Zero;
        }

        var over = Enumerable.Range(0, Ways).Min(way => Overhang(flash, way * 2 * Math.PI / Ways));
        return Length.FromMeters(Math.Max(0, over));
    }

    // The corners of the body turned round its window, against the four sides.
    private double Overhang(FlashCradleCase flash, double turn)
    {
        var (near, far) = (-flash.HeadHeight.Meters / 2, flash.BodyLength.Meters - (flash.HeadHeight.Meters / 2));
        var half = flash.BodyWidth.Meters / 2;
        var (sine, cosine) = Math.SinCos(turn);
        var worst = double.NegativeInfinity;
        foreach (var (along, across) in new[] { (near, -half), (near, half), (far, -half), (far, half) })
        {
            var right = flash.OffsetRight.Meters + (along * cosine) - (across * sine);
            var back = flash.OffsetBack.Meters + (along * sine) + (across * cosine);
            worst = Math.Max(worst, Math.Max(Math.Max(Left - right, right - Right), Math.Max(Front - back, back - Back)));
        }

        return worst;
    }
}
