using StudioKit.Field.Pictures;

namespace StudioKit.Field.Log.Matching;

/// <summary>The clock of a camera against the one that the log was kept by.</summary>
/// <param name="Ahead">How far the camera is ahead; negative where it is behind.</param>
public sealed record CameraClock(TimeSpan Ahead)
{
    // Farther off, the date itself is wrong or the pair belongs to another day.
    private static readonly TimeSpan Farthest = TimeSpan.FromDays(400);

    /// <summary>A clock that is right.</summary>
    public static CameraClock Right { get; } = new(TimeSpan.Zero);

    /// <summary>Learns the clock from a picture whose true time is known, such as one of a watch.</summary>
    /// <param name="settings">What the picture's file says.</param>
    /// <param name="truth">When it was taken.</param>
    /// <returns>The clock, or why it cannot be learnt.</returns>
    public static FieldResult<CameraClock> Learn(FrameSettings settings, DateTimeOffset truth)
    {
        ArgumentNullException.ThrowIfNull(settings);
        if (Right.Taken(settings, truth.Offset) is not { } taken)
        {
            return new FieldDiagnostic("FLD481", "camera clock", "The picture says nothing of when it was taken.");
        }

        var ahead = taken - truth;
        return ahead.Duration() <= Farthest
            ? new CameraClock(ahead)
            : new FieldDiagnostic("FLD482", "camera clock", FormattableString.Invariant($"The picture says {taken:yyyy-MM-dd HH:mm:ss}, more than a year from what was given; one of the two is mistaken."));
    }

    /// <summary>When a picture was taken.</summary>
    /// <param name="settings">What its file says.</param>
    /// <param name="zone">How far the place's clock is ahead of universal time, where the file does not say.</param>
    /// <returns>The moment on the place's clock; none where the file has no time.</returns>
    public DateTimeOffset? Taken(FrameSettings settings, TimeSpan zone)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return settings.TakenLocal is { } local && local.Year is > 1 and < 9999 ? (new DateTimeOffset(local, settings.ClockOffset ?? zone) - Ahead).ToOffset(zone) : null;
    }
}
