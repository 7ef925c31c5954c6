using System.Globalization;

namespace StudioKit.Field.Log;

/// <summary>A date of the record: a moment on somebody's clock, or a day where no more is known.</summary>
/// <remarks>Both are dates of ISO 8601-1, which Darwin Core asks for. A day is kept as a day: no hour is made up for it.</remarks>
public readonly record struct FieldDate
{
    // The earliest day on Earth begins 14 hours before it does in Greenwich.
    private static readonly TimeSpan EarliestZone = TimeSpan.FromHours(14);

    // As long as a moment is that is written to the last digit.
    private const int FullLength = 33;

    private static readonly string[] MomentForms =
    [
        "yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz", "yyyy-MM-dd'T'HH:mmzzz", "yyyy-MM-dd HH:mmzzz", "yyyy-MM-dd HH:mm zzz",
        "yyyy-MM-dd HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm:ss'Z'", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFF'Z'", "yyyy-MM-dd'T'HH:mm'Z'",
    ];

    private static readonly string[] LocalForms = ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd HH:mm", "yyyy-MM-dd HH:mm:ss"];

    private FieldDate(DateOnly day, DateTimeOffset? moment) => (Day, Moment) = (day, moment);

    /// <summary>The day, on the clock of the place.</summary>
    public DateOnly Day { get; }

    /// <summary>The moment; none where only the day is known.</summary>
    public DateTimeOffset? Moment { get; }

    /// <summary>A moment.</summary>
    /// <param name="moment">The moment with the offset of the place's clock.</param>
    public static implicit operator FieldDate(DateTimeOffset moment) => new(DateOnly.FromDateTime(moment.DateTime), moment);

    /// <summary>A day of which nothing more is known.</summary>
    /// <param name="day">The day.</param>
    public static FieldDate OfDay(DateOnly day) => new(day, null);

    /// <summary>Reads a date of ISO 8601-1: <c>2026-05-09</c>, <c>2026-05-09T14:00</c> or <c>2026-05-09T14:00:30+01:00</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="zone">How far a clock that says nothing of its zone is ahead of universal time, at a given local time.</param>
    /// <param name="date">The date.</param>
    /// <returns>Whether the text is a date.</returns>
    public static bool TryRead(string text, Func<DateTime, TimeSpan> zone, out FieldDate date)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(zone);
        date = default;
        var culture = CultureInfo.InvariantCulture;
        if (text.Length == FullLength && DateTimeOffset.TryParseExact(text, "O", culture, DateTimeStyles.None, out var full))
        {
            // It is what the log keeps by the thousand, and the quickest to tell.
            date = full;
        }
        else if (DateOnly.TryParseExact(text, "yyyy-MM-dd", culture, DateTimeStyles.None, out var day))
        {
            date = OfDay(day);
        }
        else if (DateTime.TryParseExact(text, LocalForms, culture, DateTimeStyles.None, out var local))
        {
            date = AtZone(local, zone(local));
        }
        else if (DateTimeOffset.TryParseExact(text, MomentForms, culture, DateTimeStyles.AssumeUniversal, out var moment))
        {
            date = moment;
        }
        else
        {
            return false;
        }

        return true;
    }

    /// <summary>Whether it lies after a moment, wherever on Earth it was written.</summary>
    /// <param name="moment">The moment.</param>
    public bool IsAfter(DateTimeOffset moment) =>
        Moment is { } mine ? mine > moment : Day > DateOnly.FromDateTime(moment.UtcDateTime.Add(EarliestZone));

    /// <summary>Whether it surely lies before another date: by the moment where both have one, else by the day.</summary>
    /// <param name="other">The other date.</param>
    public bool IsBefore(FieldDate other) => (Moment, other.Moment) is ({ } mine, { } theirs) ? mine < theirs : Day < other.Day;

    /// <summary>The date as text of ISO 8601-1.</summary>
    public override string ToString() => Moment is { } moment
        ? moment.ToString("yyyy-MM-ddTHH:mm:ss.FFFFFFFzzz", CultureInfo.InvariantCulture)
        : Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    // The first and the last day of the calendar have no moment in every zone.
    private static FieldDate AtZone(DateTime local, TimeSpan zone) =>
        local.Ticks - zone.Ticks is var ticks && ticks >= 0 && ticks <= DateTime.MaxValue.Ticks
            ? new DateTimeOffset(local, zone)
            : new DateTimeOffset(local, TimeSpan.Zero);
}
