using UnitsNet;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>What the settings of a set-up must keep within.</summary>
public sealed record SetUpLimits
{
    /// <summary>Lowest ISO speed of the camera.</summary>
    public IsoSpeed LowestIso { get; init; } = new(100);

    /// <summary>Highest ISO speed that the photographer accepts.</summary>
    public IsoSpeed HighestIso { get; init; } = new(3200);

    /// <summary>Shortest shutter speed at which a flash lights the whole frame.</summary>
    public ShutterSpeed FlashSync { get; init; } = new(1.0 / 200);

    /// <summary>Longest shutter speed that wind and hand allow; the camera case's own where none is given.</summary>
    public ShutterSpeed? LongestShutter { get; init; }

    /// <summary>Longest wait between two frames; none where any will do.</summary>
    public Duration? LongestRecycle { get; init; }

    /// <summary>Longest flash, t0.1, that freezes the subject; none where any will do.</summary>
    public Duration? LongestFlash { get; init; }
}
