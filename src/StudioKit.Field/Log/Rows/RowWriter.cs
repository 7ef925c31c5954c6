using System.Globalization;
using StudioKit.Planning.Tables;

namespace StudioKit.Field.Log.Rows;

/// <summary>Writes a log in rows that can be entered again; what the printed sheet has no box for is not in them.</summary>
public static class RowWriter
{
    /// <summary>What takes back a framing, set-up or place that holds from row to row.</summary>
    internal const string Nothing = "-";

    /// <summary>An animal without a name.</summary>
    internal const string Unknown = "?";

    /// <summary>Stands before the time at which an animal was no longer held but not released either.</summary>
    internal const string Kept = "kept ";

    private const string LineEnd = "\r\n";

    internal const string BodyLength = "body length";
    internal const string TimeSeen = "time seen";

    /// <summary>The head alone, to be filled in.</summary>
    public static string Template => CsvText.Row([.. RowColumns.All]);

    /// <summary>Writes the rows.</summary>
    /// <param name="log">The log.</param>
    /// <param name="zone">How far a clock is ahead of universal time at a local time.</param>
    /// <param name="numbers">File names that are written as numbers.</param>
    /// <returns>Comma-separated text with a head, or which pictures cannot be written so that they are read again.</returns>
    public static FieldResult<string> Write(LogSnapshot log, Func<DateTime, TimeSpan> zone, FrameNumbers numbers)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(numbers);
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        CsvText.Write(text, RowColumns.All, LineEnd);
        var clocks = new Dictionary<(DateOnly, string), RowClock>();
        var tree = new LogTree(log);
        foreach (var session in log.Sessions)
        {
            var key = (session.Start.Day, session.Locality);
            var clock = clocks.TryGetValue(key, out var known) ? known : clocks[key] = new RowClock(session.Start.Day, zone);
            foreach (var subject in tree.Of(session))
            {
                var made = SubjectRows.Of(tree, subject, clock, numbers);
                if (!made.IsSound)
                {
                    return FieldResult<string>.Refused(made.Diagnostics);
                }

                made.Value.ForEach(row => Write(text, row, session));
            }
        }

        return text.ToString();
    }

    private static void Write(StringWriter text, Dictionary<string, string> row, FieldSession session)
    {
        row[RowColumns.Date] = session.Start.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        row[RowColumns.Place] = session.Locality.Length > 0 ? session.Locality : Nothing;
        CsvText.Write(text, RowColumns.All.Select(column => SpreadsheetGuard.On(row.GetValueOrDefault(column, ""))), LineEnd);
    }
}
