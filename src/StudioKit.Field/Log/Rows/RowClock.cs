using System.Globalization;

namespace StudioKit.Field.Log.Rows;

/// <summary>Reads and writes the times of a session's rows, which go without a day and may pass midnight.</summary>
/// <remarks>A bare time is of the day on which it lies nearest to the time before it; the first is of the session's own day.</remarks>
internal sealed class RowClock(DateOnly day, Func<DateTime, TimeSpan> zone)
{
    private static readonly string[] Forms = ["H:mm", "HH:mm", "H:mm:ss", "HH:mm:ss", "H.mm", "HH.mm"];
    private static readonly string[] Shortest = ["HH:mm", "HH:mm:ss"];
    private DateTime? _last;

    /// <summary>Reads a time, with or without its day.</summary>
    /// <returns>The moment; none where the text is none.</returns>
    public DateTimeOffset? Read(string text)
    {
        var moment = Moment(text);
        _last = moment?.DateTime ?? _last;
        return moment;
    }

    /// <summary>Writes a moment as shortly as it can be read again.</summary>
    public string Write(DateTimeOffset moment)
    {
        var text = Shortest.Select(form => moment.ToString(form, CultureInfo.InvariantCulture)).FirstOrDefault(form => Moment(form) is { } read && read.EqualsExact(moment))
            ?? ((FieldDate)moment).ToString();
        _last = moment.DateTime;
        return text;
    }

    private DateTimeOffset? Moment(string text)
    {
        if (!TimeOnly.TryParseExact(text, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            return FieldDate.TryRead(text, zone, out var date) ? date.Moment : null;
        }

        // Noon keeps the days before and after within the calendar.
        var known = _last is { } last ? DateOnly.FromDateTime(last) : day;
        var local = _last is { } before && known > DateOnly.MinValue && known < DateOnly.MaxValue
            ? new[] { known.AddDays(-1), known, known.AddDays(1) }.Select(candidate => candidate.ToDateTime(time)).MinBy(candidate => (candidate - before).Duration())
            : known.ToDateTime(time);
        return FieldDate.TryRead(local.ToString("yyyy-MM-dd'T'HH:mm:ss", CultureInfo.InvariantCulture), zone, out var read) ? read.Moment : null;
    }
}
