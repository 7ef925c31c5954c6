using System.CommandLine;
using System.Globalization;
using StudioKit.Cli.Records;
using StudioKit.Cli.Running;
using StudioKit.Cli.Usage;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Rows;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log list</c>: what the log holds.</summary>
internal static class LogListCommand
{
    private const string Text =
        """
        Lists sessions with their subjects, frames and measurements by short identifier, and checks the file. The log may be read-only.

        Example: studiokit log list
        Example: studiokit log list --log fen.log --json
        Example: studiokit log list --csv > rows.csv
        """;

    public static Command Create(CommandHost host, Option<string> file)
    {
        var json = JsonOption.Create();
        var csv = new Option<bool>("--csv") { Description = "Print rows as 'studiokit log enter' takes them; what the paper log has no box for is left out." };
        var command = new Command("list", Text) { json, csv };
        command.SetAction(parsed => (int)OpenLog.ToRead(host, parsed.GetRequiredValue(file), log =>
        {
            var index = log.Index();
            var snapshot = index.Log;
            return LogDamage.Told(host, parsed.GetRequiredValue(file), log, parsed.GetValue(csv) ? Rows(host, snapshot) : Show(host, snapshot, index, parsed.GetValue(json)));
        }));
        return command;
    }

    private static ExitCode Rows(CommandHost host, LogSnapshot log) =>
        OpenLog.With(host, RowWriter.Write(log, local => host.Clock.LocalTimeZone.GetUtcOffset(local), FrameNumbers.Usual), rows =>
        {
            host.Output.Write(rows);
            return ExitCode.Done;
        });

    private static ExitCode Show(CommandHost host, LogSnapshot log, LogIndex index, bool asJson)
    {
        if (asJson)
        {
            Json(host.Output, log, index);
        }
        else
        {
            using var lines = new LinesTogether(host.Output);
            Lines(lines, log, index);
        }

        if (!log.Records.Any())
        {
            host.Error.WriteLine("The log is empty.");
        }

        return ExitCode.Done;
    }

    private static void Lines(TextWriter lines, LogSnapshot log, LogIndex index)
    {
        var tree = new LogTree(log);
        foreach (var session in log.Sessions)
        {
            lines.WriteLine($"{index.ShortId(session.Id)}  {When(session.Start)}  {string.Join(", ", new[] { session.Name, session.Locality }.Where(part => part.Length > 0))}".TrimEnd());
            foreach (var subject in tree.Of(session))
            {
                lines.WriteLine($"  {index.ShortId(subject.Id)}  {LogHoldCommand.Name(subject)}{Told(subject.Sensitivity)}".TrimEnd());
                WriteBelonging(lines, tree, index, subject);
            }
        }
    }

    private static void WriteBelonging(TextWriter lines, LogTree tree, LogIndex index, FieldSubject subject)
    {
        foreach (var frame in tree.Frames(subject))
        {
            lines.WriteLine($"    {index.ShortId(frame.Id)}  {frame.FileName}{(frame.Taken is { } taken ? "  " + When(taken) : "")}");
        }

        foreach (var measurement in tree.Measurements(subject))
        {
            lines.WriteLine($"    {index.ShortId(measurement.Id)}  {measurement.Type} {measurement.Value} {measurement.Unit}".TrimEnd());
        }
    }

    private static string Told(PlaceSensitivity sensitivity) => sensitivity == PlaceSensitivity.Open ? "" : $" (place: {ChoiceWords.Of(sensitivity)})";

    private static string When(FieldDate date) => date.Moment is { } moment ? moment.ToString("yyyy-MM-dd HH:mm zzz", CultureInfo.InvariantCulture) : date.ToString();

    private static void Json(TextWriter output, LogSnapshot log, LogIndex index) => JsonReport.WriteLine(output, json => json
        .List("sessions", log.Sessions, session => json
            .Text("shortId", index.ShortId(session.Id)).Text("id", session.Id).Text("start", session.Start.ToString()).Text("end", session.End?.ToString())
            .Text("name", session.Name).Text("locality", session.Locality)
            .Number("latitudeDeg", session.Latitude).Number("longitudeDeg", session.Longitude).Number("coordinateUncertaintyM", session.CoordinateUncertainty))
        .List("subjects", log.Subjects, subject => json
            .Text("shortId", index.ShortId(subject.Id)).Text("id", subject.Id).Text("session", subject.SessionId).Text("scientificName", subject.ScientificName)
            .Text("identificationQualifier", subject.IdentificationQualifier).Text("vernacularName", subject.VernacularName).Text("sensitivity", ChoiceWords.Of(subject.Sensitivity))
            .Number("heldS", subject.HoldEnd is { } end && subject.HoldStart is { } start ? (end - start).TotalSeconds : null)
            .Number("holdLimitS", subject.HoldLimit?.TotalSeconds))
        .List("frames", log.Frames, frame => json
            .Text("shortId", index.ShortId(frame.Id)).Text("id", frame.Id).Text("subject", frame.SubjectId).Text("file", frame.FileName).Text("taken", frame.Taken?.ToString())
            .Text("caption", frame.Caption).Text("lens", frame.Lens).Text("framing", frame.Framing).Text("setUp", frame.SetUp).Number("exposureTimeS", frame.ExposureTime)
            .Number("fNumber", frame.FNumber).Number("iso", frame.Iso).Number("focalLengthMm", frame.FocalLength).Number("pixelSizeUm", frame.MicrometresPerPixel))
        .List("measurements", log.Measurements, measurement => json
            .Text("shortId", index.ShortId(measurement.Id)).Text("id", measurement.Id).Text("subject", measurement.SubjectId).Text("type", measurement.Type).Text("value", measurement.Value)
            .Text("unit", measurement.Unit)));
}
