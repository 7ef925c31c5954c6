using System.Globalization;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Matching;

namespace StudioKit.Cli.Records;

/// <summary>Matches as a table of plain text, one line a picture.</summary>
internal static class FrameMatchTable
{
    private static readonly string[] Head = ["picture", "taken", "shows", "why", "scale", "framing", "set-up", "why"];

    public static string Of(IReadOnlyList<FrameMatch> matches, LogIndex index, IReadOnlyList<FieldFrame> known)
    {
        var rows = matches.Select(match => Row(match, match.ToFrame(known), index)).Prepend(Head).ToList();
        var used = Enumerable.Range(0, Head.Length).Where(column => rows.Skip(1).Any(row => row[column].Length > 0)).ToList();
        var widths = used.ToDictionary(column => column, column => rows.Max(row => row[column].Length));
        return string.Concat(rows.Select(row => string.Join("  ", used.Select(column => row[column].PadRight(widths[column]))).TrimEnd() + Environment.NewLine));
    }

    private static string[] Row(FrameMatch match, FieldFrame? frame, LogIndex index) =>
    [
        match.Picture.FileName,
        (frame is null ? match.Subject.Taken : frame.Taken?.Moment)?.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture) ?? frame?.Taken?.ToString() ?? "",
        match.Subject.Subject is { } subject ? Name(index.Entry(subject.Id)!) : "-",
        FrameMatchWords.Why(match.Subject, index),
        FrameMatchWords.Scale(match.Picture),
        frame?.Framing ?? match.Framing.Framing,
        frame?.SetUp ?? match.Framing.SetUp,
        FrameMatchWords.Why(match, frame),
    ];

    private static string Name(LogEntry entry) => entry.Names.Count > 0 ? $"{entry.ShortId} {entry.Names[0]}" : entry.ShortId;
}
