using StudioKit.Physics.Daylight;
using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>A stretch of the day in which something can be photographed.</summary>
/// <param name="Sky">Sky whose expected light lies in the window then; none where the sun is not looked at.</param>
/// <param name="From">Minutes from midnight of the day's date to its start [1]; 0 to 1439.</param>
/// <param name="To">The same to its end [1]; over 1440 on the day after.</param>
public sealed record LightTime(SkyState? Sky, int From, int To)
{
    /// <summary>How long it is.</summary>
    public Duration Length => Duration.FromMinutes(To - From);
}
