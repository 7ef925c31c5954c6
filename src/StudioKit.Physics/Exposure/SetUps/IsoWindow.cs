using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.Series;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>The ISO speeds at which every limit is met, in stops above ISO 100, and which limit bounds them.</summary>
internal struct IsoWindow
{
    private const double SameClick = 1e-6;

    private double lowest;
    private double highest;
    private (IsoBound Bound, FlashCase? Flash) below;
    private (IsoBound Bound, FlashCase? Flash) above;

    public IsoWindow(SetUpLimits limits)
    {
        lowest = StopsOf(limits.LowestIso);
        highest = StopsOf(limits.HighestIso);
        Guard.NonNegative(highest - lowest, nameof(limits.HighestIso));
    }

    public static double StopsOf(IsoSpeed iso) => Math.Log2(ThirdStopSeries.FromMark(iso).Value / 100);

    public static IsoSpeed SpeedAt(double stops) => new(100 * Math.Pow(2, stops));

    public void AtLeast(double stops, IsoBound bound, FlashCase? flash = null)
    {
        if (stops > lowest)
        {
            lowest = stops;
            below = (bound, flash);
        }
    }

    public void AtMost(double stops, IsoBound bound, FlashCase? flash = null)
    {
        if (stops < highest)
        {
            highest = stops;
            above = (bound, flash);
        }
    }

    /// <summary>
    /// The third-stop click in the window nearest to a start; in an empty window the click nearest to its lower end that the
    /// camera has.
    /// </summary>
    public readonly double Choose(double start, SetUpLimits limits, out MissedLimit? conflict)
    {
        var low = Math.Ceiling((3 * lowest) - SameClick) / 3;
        var high = Math.Floor((3 * highest) + SameClick) / 3;
        conflict = low > high ? Conflict() : null;
        return conflict is null
            ? Math.Clamp(Math.Round(3 * start) / 3, low, high)
            : Math.Clamp(Math.Max(low, high), StopsOf(limits.LowestIso), StopsOf(limits.HighestIso));
    }

    private readonly MissedLimit.IsoConflict Conflict()
    {
        var needed = Math.Ceiling((3 * lowest) - SameClick) / 3;
        var allowed = Math.Floor((3 * highest) + SameClick) / 3;
        return new MissedLimit.IsoConflict(SpeedAt(needed), below.Bound, below.Flash, SpeedAt(allowed), above.Bound, above.Flash, new Stops(needed - allowed));
    }
}
