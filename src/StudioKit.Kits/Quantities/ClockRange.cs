using UnitsNet;

namespace StudioKit.Kits.Quantities;

/// <summary>Hours of a day, as in <c>09:00 to 17:00</c>; past midnight where the second comes before the first.</summary>
/// <param name="From">Minutes from midnight to its start [1]; 0 to 1439.</param>
/// <param name="To">Minutes from midnight to its end, which is not part of it [1]; 0 to 1439, other than the start.</param>
public sealed record ClockRange(int From, int To)
{
    private const int Day = 24 * 60;

    /// <summary>How long it lasts; under a day.</summary>
    public Duration Length => Duration.FromMinutes(Minutes);

    private int Minutes => Since(From, To);

    /// <summary>Whether a time of the day lies in it.</summary>
    /// <param name="minute">Minutes from midnight [1]; 0 to 1439.</param>
    public bool Holds(int minute) => Since(From, minute) < Minutes;

    /// <summary>The part of both that a time lies in; none where it does not lie in both.</summary>
    /// <param name="other">The other hours.</param>
    /// <param name="minute">Minutes from midnight [1]; 0 to 1439.</param>
    /// <exception cref="ArgumentNullException">There are no other hours.</exception>
    public ClockRange? With(ClockRange other, int minute)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (!Holds(minute) || !other.Holds(minute))
        {
            return null;
        }

        var before = Math.Min(Since(From, minute), Since(other.From, minute));
        var after = Math.Min(Since(minute, To), Since(minute, other.To));
        return new ClockRange((minute - before + Day) % Day, (minute + after) % Day);
    }

    private static int Since(int start, int end) => (end - start + Day) % Day;
}
