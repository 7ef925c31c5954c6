using System.Globalization;
using StudioKit.Field.Log;

namespace StudioKit.Cli.Tables;

/// <summary>What the rows of a paper log say, animal by animal, for a person to compare with the sheet.</summary>
internal static class EnteredText
{
    public static void Print(TextWriter output, LogSnapshot records, LogSnapshot log)
    {
        foreach (var sessionId in records.Subjects.Select(subject => subject.SessionId).Distinct(StringComparer.Ordinal))
        {
            var begun = records.Sessions.FirstOrDefault(session => session.Id == sessionId);
            var session = begun ?? log.Sessions.First(known => known.Id == sessionId);
            output.WriteLine($"{(begun is null ? "session" : "new session")} {session.Start.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)} {Name(session)}".TrimEnd());
            foreach (var subject in records.Subjects.Where(subject => subject.SessionId == sessionId))
            {
                output.WriteLine($"  {Subject(subject)}");
                Pictures(output, [.. records.Frames.Where(frame => frame.SubjectId == subject.Id)]);
                foreach (var measurement in records.Measurements.Where(measurement => measurement.SubjectId == subject.Id))
                {
                    output.WriteLine($"    {measurement.Type}: {$"{measurement.Value} {measurement.Unit}".TrimEnd()}");
                }
            }
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Counted(records.Subjects.Count, "subject")}, {Counted(records.Frames.Count, "picture")}, {Counted(records.Sessions.Count, "new session")}"));
    }

    private static string Counted(int count, string what) => string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");

    private static string Name(FieldSession session) => ReleasePreview.Shown(session.Name.Length > 0 ? session.Name : session.Locality);

    private static string Subject(FieldSubject subject)
    {
        var name = string.Join(' ', new[] { subject.VernacularName, subject.ScientificName, subject.IdentificationQualifier }.Where(part => part.Length > 0));
        var parts = new[]
        {
            subject.IndividualCount is { } count ? string.Create(CultureInfo.InvariantCulture, $"{count} of them") : "", subject.Sex, subject.LifeStage,
            subject.HoldStart is { } held ? $"held since {Clock(held)}" : "",
            subject.HoldEnd is { } end ? $"{(subject.Released == true ? "released" : "kept")} at {Clock(end)}" : "",
            subject.Sensitivity == PlaceSensitivity.Open ? "" : $"place {subject.Sensitivity.ToString().ToLowerInvariant()}", subject.Remarks,
        };
        return ReleasePreview.Shown(string.Join(", ", parts.Where(part => part.Length > 0).Prepend(name.Length > 0 ? name : "no name yet")));
    }

    private static void Pictures(TextWriter output, List<FieldFrame> frames)
    {
        foreach (var run in frames.GroupBy(frame => (frame.Taken, frame.Framing, frame.SetUp)))
        {
            var names = run.Count() > 2 ? $"{run.First().FileName} to {run.Last().FileName}, {run.Count()} pictures" : string.Join(", ", run.Select(frame => frame.FileName));
            var about = new[] { run.Key.Framing, run.Key.SetUp, run.Key.Taken?.Moment is { } taken ? Clock(taken) : "" }.Where(part => part.Length > 0);
            output.WriteLine(ReleasePreview.Shown($"    {string.Join("; ", about.Prepend(names))}"));
        }
    }

    private static string Clock(DateTimeOffset moment) => moment.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
