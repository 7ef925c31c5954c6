using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>Settings of the feet that hold a frame level on a slope.</summary>
public static class FootLevelling
{
    /// <summary>How far each foot is turned out.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="slope">Slope of the ground; 0° to 45°.</param>
    /// <param name="downhill">Where the ground falls to, counted from straight away from the camera towards the right.</param>
    /// <returns>Cap floor to ground, by label of the cap.</returns>
    /// <exception cref="ArgumentNullException">There is no frame.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range, or not finite.</exception>
    /// <remarks>extension = level extension + tan(slope)·(distance downhill of the feet's middle).</remarks>
    [Source("Derived", "plane ground under four feet")]
    public static IReadOnlyDictionary<string, Length> Extensions(FrameResult frame, Angle slope, Angle downhill)
    {
        ArgumentNullException.ThrowIfNull(frame);
        var rise = Math.Tan(Guard.Between(slope.Radians, 0, Math.PI / 4, nameof(slope)));
        var bearing = Guard.Finite(downhill.Radians, nameof(downhill));
        var middle = frame.Feet.Count == 0 ? 0 : frame.Feet.Average(foot => Downhill(foot.Position, bearing));

        return frame.Feet.ToDictionary(
            foot => foot.Joint,
            foot => foot.LevelExtension + Length.FromMeters(rise * (Downhill(foot.Position, bearing) - middle)),
            StringComparer.Ordinal);
    }

    private static double Downhill(FramePoint place, double bearing) =>
        (place.Right * Math.Sin(bearing)) + (place.Back * Math.Cos(bearing));
}
