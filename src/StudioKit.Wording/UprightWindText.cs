using StudioKit.Planning;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>The wind that an upright sheet stands in, in words.</summary>
public static class UprightWindText
{
    // What the forces of the Beaufort scale look like on land (WMO manual on codes, in our own words).
    private static readonly string[] Signs =
    [
        "smoke rises straight", "smoke drifts", "wind is felt on the face, leaves rustle", "leaves and small twigs move all the time", "dust and loose leaves fly, small branches move",
        "small trees in leaf begin to sway", "large branches move, wires whistle", "whole trees move",
    ];

    /// <summary>A force by its number and its sign.</summary>
    /// <param name="force">Force on the Beaufort scale [1].</param>
    public static string Force(int force) => force < Signs.Length
        ? FormattableString.Invariant($"Beaufort {force} ({Signs[force]})")
        : FormattableString.Invariant($"Beaufort {force}");

    /// <summary>Up to which wind it stands, and from which on it comes down.</summary>
    /// <param name="upright">What holds the upright sheet.</param>
    /// <exception cref="ArgumentNullException">There is none.</exception>
    public static string Of(UprightStandPlan upright)
    {
        ArgumentNullException.ThrowIfNull(upright);
        return $"It stands in gusts of up to {MeasureFormat.Speed(Tenths(upright.HighestGust))}, a mean of {MeasureFormat.Speed(Tenths(upright.HighestMean))}: take it down from {Force(upright.TakeDownFrom)} on.";
    }

    // A wind that it stands in is never rounded up.
    private static Speed Tenths(Speed speed) => Speed.FromMetersPerSecond(Math.Floor((speed.MetersPerSecond * 10) + 1e-6) / 10);
}
