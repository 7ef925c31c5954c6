using StudioKit.Physics.Sources;

namespace StudioKit.Wording;

/// <summary>The forces of the wind by what is seen on land, as somebody without an instrument tells them.</summary>
public static class WindSigns
{
    private static readonly string[] Signs =
    [
        "smoke goes straight up",
        "smoke drifts, leaves hang still",
        "felt on the face, leaves rustle",
        "leaves and thin twigs move all the time, a light flag stands out",
        "dust and loose paper fly up, thin branches move",
        "small trees in leaf sway, ponds have crests",
        "thick branches move, an umbrella is hard to hold",
        "whole trees move, walking against it is work",
        "twigs break off, walking against it hardly goes",
    ];

    /// <summary>The strongest force with a sign here; nobody photographs in more [1].</summary>
    public static int Strongest => Signs.Length - 1;

    /// <summary>What is seen at a force.</summary>
    /// <param name="force">Force [1]; 0 to <see cref="Strongest"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside its range.</exception>
    [Source("Wmo306", "volume I.1, part A, section E, specifications for use on land")]
    public static string Seen(int force)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(force);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(force, Strongest);
        return Signs[force];
    }
}
