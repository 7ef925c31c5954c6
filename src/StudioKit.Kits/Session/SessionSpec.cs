using UnitsNet;

namespace StudioKit.Kits.Session;

/// <summary>How long the steps of a session take, and how much is shot (common practice, no source; time your own).</summary>
/// <example><code language="yaml">
/// session:
///   setting-up: 20 min
///   changing: 3 min
///   frames: 6
/// </code></example>
public sealed record SessionSpec
{
    /// <summary>Unpacking to the first set-up ready for its test.</summary>
    public Duration SettingUp { get; init; } = Duration.FromMinutes(20);

    /// <summary>Changing from one set-up to another.</summary>
    public Duration Changing { get; init; } = Duration.FromMinutes(3);

    /// <summary>Changing lens or magnification within a set-up.</summary>
    public Duration Reframing { get; init; } = Duration.FromMinutes(1);

    /// <summary>Catching or fetching an animal until it sits on the sheet.</summary>
    public Duration Settling { get; init; } = Duration.FromMinutes(1);

    /// <summary>Shortest time from one frame to the next.</summary>
    public Duration FrameTime { get; init; } = Duration.FromSeconds(5);

    /// <summary>Longest that a flash may take to recharge between frames; as long as its power takes where the kit gives none.</summary>
    public Duration? LongestRecycle { get; init; }

    /// <summary>Frames of the test object at each framing of a set-up [1].</summary>
    public int TestFrames { get; init; } = 2;

    /// <summary>Frames of a subject in each set-up [1].</summary>
    public int Frames { get; init; } = 6;

    /// <summary>How often in a day the session is gone through with new animals [1].</summary>
    public int Rounds { get; init; } = 1;
}
