namespace StudioKit.Field.Log;

/// <summary>How long an animal has been held.</summary>
/// <param name="Elapsed">Time since it was taken up, or until it was let go.</param>
/// <param name="Limit">Most time it may be held; none where no limit was given.</param>
/// <param name="IsHeld">Whether it is still held.</param>
public sealed record HoldStatus(TimeSpan Elapsed, TimeSpan? Limit, bool IsHeld)
{
    /// <summary>How long an animal has been held.</summary>
    /// <param name="subject">The animal.</param>
    /// <param name="now">Present moment.</param>
    /// <returns>The status; none where it never was held.</returns>
    public static HoldStatus? Of(FieldSubject subject, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(subject);
        return subject.HoldStart is { } start ? new HoldStatus((subject.HoldEnd ?? now) - start, subject.HoldLimit, subject.HoldEnd is null) : null;
    }

    /// <summary>Time left, negative once the limit is passed; none where no limit was given.</summary>
    public TimeSpan? Remaining => Limit - Elapsed;

    /// <summary>Whether the limit is reached: let it go.</summary>
    public bool IsAtLimit => Remaining <= TimeSpan.Zero;
}
