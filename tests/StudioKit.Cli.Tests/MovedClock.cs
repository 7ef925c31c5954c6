namespace StudioKit.Cli.Tests;

/// <summary>A clock that stands until it is moved; at first an afternoon in May.</summary>
internal sealed class MovedClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 5, 9, 14, 0, 0, TimeSpan.Zero);

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => Now;
}
