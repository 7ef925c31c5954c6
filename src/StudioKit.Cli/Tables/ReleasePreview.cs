using System.Globalization;
using StudioKit.Field.Log.Release;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Tables;

/// <summary>The list of all that leaves the log, field by field, with what stays and why.</summary>
internal static class ReleasePreview
{
    public static void Print(TextWriter output, LogRelease release)
    {
        foreach (var session in release.Sessions)
        {
            output.WriteLine($"session {session.Session.Id}: {ReleaseText.Level(session.Sensitivity)}");
            Fields(output, session.Record, "  ");
            foreach (var subject in session.Subjects)
            {
                output.WriteLine($"  subject {subject.Subject.Id}");
                Fields(output, subject.Record, "    ");
                Fields(output, subject.Facts, "    ");
                foreach (var record in subject.Frames.SelectMany(frame => new[] { frame.Record, frame.Facts }).Concat(subject.Measurements))
                {
                    output.WriteLine($"    {Shown(record.Id)}");
                    Fields(output, record, "      ");
                }
            }
        }
    }

    public static void Notes(TextWriter output, LogRelease release, IEnumerable<ReleaseNote> notes)
    {
        var names = release.Sessions.SelectMany(Names).ToLookup(name => name.Id, name => name.Text, StringComparer.Ordinal);
        foreach (var note in notes)
        {
            output.WriteLine("note: " + ReleaseText.Note(note, id => names[id].FirstOrDefault(id)));
        }
    }

    public static string Json(LogRelease release) => JsonReport.Document(json => json
        .List("fields", release.Sessions.SelectMany(Rows).ToList(), row => json
            .Text("kind", row.Kind).Text("record", row.Record.Id).Text("publishedAs", row.Record.PublishedId).Text("field", row.Field.Term)
            .Text("recorded", row.Field.Recorded).Text("published", row.Field.Published).Text("fate", ReleaseText.Fate(row.Field.Fate).ToLowerInvariant())
            .Text("reason", ReleaseText.Reason(row.Field))));

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
    public static string Shown(string text) => string.Concat(text.Select(character => character switch
    {
        '\n' => "\\n",
        '\t' => "\\t",
        _ when char.IsControl(character) || char.GetUnicodeCategory(character) == UnicodeCategory.Format => $"\\u{(int)character:x4}",
        _ => character.ToString(),
    }));

    private static IEnumerable<(string Id, string Text)> Names(SessionRelease session) =>
        session.Subjects.Select(subject => (subject.Subject.Id, Named(subject.Subject.Id, subject.Subject.ScientificName, subject.Subject.VernacularName)))
            .Prepend((session.Session.Id, Named(session.Session.Id, session.Session.Name, session.Session.Locality)));

    private static string Named(string id, string first, string second) =>
        first.Length > 0 ? $"'{Shown(first)}' ({id})" : second.Length > 0 ? $"'{Shown(second)}' ({id})" : id;

    private static IEnumerable<(string Kind, ReleasedRecord Record, ReleasedField Field)> Rows(SessionRelease session)
    {
        (string Kind, ReleasedRecord Record)[] records =
        [
            ("session", session.Record),
            .. session.Subjects.SelectMany(subject => new[] { ("subject", subject.Record), ("subject", subject.Facts) }
                .Concat(subject.Frames.SelectMany(frame => new[] { ("picture", frame.Record), ("picture", frame.Facts) }))
                .Concat(subject.Measurements.Select(measurement => ("measurement", measurement)))),
        ];
        return records.SelectMany(entry => entry.Record.Fields.Select(value => (entry.Kind, entry.Record, value)));
    }
}
