using System.Globalization;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Release;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Tables;

/// <summary>The list of all that leaves the log, field by field, with what stays and why.</summary>
internal static class ReleasePreview
{
    public static void Print(TextWriter output, LogRelease release, LogIndex index)
    {
        foreach (var session in release.Sessions)
        {
            output.WriteLine($"session {Called(index, session.Session.Id)}: {ReleaseText.Level(session.Sensitivity)}");
            Fields(output, session.Record, "  ");
            foreach (var subject in session.Subjects)
            {
                output.WriteLine($"  subject {Called(index, subject.Subject.Id)}");
                Fields(output, Together(subject.Record, subject.Facts), "    ");
                foreach (var record in subject.Frames.Select(frame => Together(frame.Record, frame.Facts)).Concat(subject.Measurements))
                {
                    output.WriteLine($"    {Called(index, record.Id)}");
                    Fields(output, record, "      ");
                }
            }
        }
    }

    public static void Notes(TextWriter output, LogIndex index, IEnumerable<ReleaseNote> notes)
    {
        foreach (var note in notes)
        {
            output.WriteLine("note: " + Shown(ReleaseText.Note(note, id => Called(index, id))));
        }
    }

    public static void Json(TextWriter output, LogRelease release, LogIndex index) => JsonReport.WriteLine(output, json => json
        .List("fields", release.Sessions.SelectMany(Rows), row => json
            .Text("kind", row.Kind).Text("shortId", index.ShortId(row.Record.Id)).Text("record", row.Record.Id).Text("publishedAs", row.Record.PublishedId).Text("field", row.Field.Term)
            .Text("recorded", row.Field.Recorded).Text("published", row.Field.Published).Text("fate", ReleaseText.Fate(row.Field.Fate).ToLowerInvariant())
            .Text("reason", ReleaseText.Reason(row.Field))));

    private static ReleasedRecord Together(ReleasedRecord record, ReleasedRecord facts) => record with { Fields = [.. record.Fields, .. facts.Fields] };

    private static string Called(LogIndex index, string id) => Shown(index.Entry(id)?.ToString() ?? id);

    // Fields that were never recorded are named on one line: they say nothing here and nothing there.
    private static void Fields(TextWriter output, ReleasedRecord record, string indent)
    {
        foreach (var entry in record.Fields.Where(entry => entry.Recorded.Length + entry.Published.Length > 0))
        {
            var change = entry.Fate switch
            {
                FieldFate.Coarsened => $"{Shown(entry.Recorded)} -> {Shown(entry.Published)}",
                FieldFate.Withheld => Shown(entry.Recorded),
                _ => Shown(entry.Published),
            };
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{indent}{ReleaseText.Fate(entry.Fate)} {entry.Term}: {change} ({ReleaseText.Reason(entry)})"));
        }

        var empty = record.Fields.Where(entry => entry.Recorded.Length + entry.Published.Length == 0).Select(entry => entry.Term).ToList();
        if (empty.Count > 0)
        {
            output.WriteLine($"{indent}never recorded: {string.Join(", ", empty)}");
        }
    }

    // One line a field, whatever it holds.
    public static string Shown(string text) => !text.AsSpan().ContainsAnyExceptInRange(' ', '~') ? text : string.Concat(text.Select(character => character switch
    {
        '\n' => "\\n",
        '\t' => "\\t",
        _ when char.IsControl(character) || char.GetUnicodeCategory(character) == UnicodeCategory.Format => $"\\u{(int)character:x4}",
        _ => character.ToString(),
    }));

    private static IEnumerable<(string Kind, ReleasedRecord Record, ReleasedField Field)> Rows(SessionRelease session) => session.Subjects
        .SelectMany(subject => new[] { ("subject", subject.Record), ("subject", subject.Facts) }
            .Concat(subject.Frames.SelectMany(frame => new[] { ("picture", frame.Record), ("picture", frame.Facts) }))
            .Concat(subject.Measurements.Select(measurement => ("measurement", measurement))))
        .Prepend(("session", session.Record))
        .SelectMany(entry => entry.Item2.Fields.Select(value => (entry.Item1, entry.Item2, value)));
}
