namespace StudioKit.FieldFiles.Tests.Log;

/// <summary>A clock that stands until it is moved.</summary>
internal sealed class FixedTime(DateTimeOffset now) : TimeProvider
{
    public DateTimeOffset Now { get; set; } = now;

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => Now.ToUniversalTime();
}
