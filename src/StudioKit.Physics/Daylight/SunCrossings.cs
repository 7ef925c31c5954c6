using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Daylight;

/// <summary>When the sun passes a height: rising, setting, twilights.</summary>
public static class SunCrossings
{
    // Two crossings within one step of each other, where the sun grazes the height, are passed over.
    private const double Step = 5;
    private const int Halvings = 16;

    /// <summary>Height of the sun's middle, without refraction, when its upper edge is on the horizon.</summary>
    /// <remarks>34′ of refraction at the horizon, and the sun's half-width of 16′.</remarks>
    [Source("Meeus1998", "ch. 15, h₀ = -0°50′ for the sun")]
    public static Angle Horizon { get; } = Angle.FromDegrees(-5.0 / 6);

    /// <summary>Height of the sun's middle where civil twilight and night meet.</summary>
    [Source("TwilightHko", "6, 12 and 18 degrees below the horizon")]
    public static Angle CivilTwilight { get; } = Angle.FromDegrees(-6);

    /// <summary>Height of the sun's middle where nautical twilight ends.</summary>
    [Source("TwilightHko", "6, 12 and 18 degrees below the horizon")]
    public static Angle NauticalTwilight { get; } = Angle.FromDegrees(-12);

    /// <summary>When the sun passes a height within a span of time.</summary>
    /// <param name="place">The place.</param>
    /// <param name="date">Date in Universal Time from whose midnight minutes count.</param>
    /// <param name="from">Begin of the span [min]; finite.</param>
    /// <param name="to">Its end [min]; finite.</param>
    /// <param name="height">Height without refraction.</param>
    /// <returns>Minutes from the midnight, and whether the sun rises through the height then; in order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An end is not finite.</exception>
    [Source("Derived", "sign changes of the sun's height, halved to a thousandth of a minute")]
    public static IReadOnlyList<(double Minute, bool Rises)> Of(GeographicPlace place, DateOnly date, double from, double to, Angle height)
    {
        Guard.Finite(to);
        var found = new List<(double, bool)>();
        var before = Over(Guard.Finite(from));
        for (var begin = from; begin < to; begin += Step)
        {
            var end = Math.Min(begin + Step, to);
            var after = Over(end);
            if (before != after)
            {
                found.Add((Between(begin, end, before), after));
            }

            before = after;
        }

        return found;

        bool Over(double minute) => SolarPosition.At(place, date, minute).Height > height;

        double Between(double low, double high, bool overAtLow)
        {
            for (var i = 0; i < Halvings; i++)
            {
                var middle = (low + high) / 2;
                (low, high) = Over(middle) == overAtLow ? (middle, high) : (low, middle);
            }

            return (low + high) / 2;
        }
    }
}
