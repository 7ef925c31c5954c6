using System.CommandLine;
using System.Globalization;
using StudioKit.Field.Log;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log list</c>: what the log holds.</summary>
internal static class LogListCommand
{
    public static Command Create(CommandHost host, Option<string> file)
    {
        var json = JsonOption.Create();
        var command = new Command("list", "Lists sessions with their subjects and frames, and checks the file.") { json };
        command.SetAction(parsed => (int)LogCommand.With(host, parsed.GetRequiredValue(file), log =>
        {
            var faults = log.CheckIntegrity();
            var snapshot = log.Read();
            host.Output.Write(parsed.GetValue(json) ? Json(snapshot) + Environment.NewLine : Lines(snapshot));
            foreach (var fault in faults)
            {
                host.Error.WriteLine($"{parsed.GetRequiredValue(file)}: damaged: {fault}");
            }

            return faults.Count == 0 ? ExitCode.Done : ExitCode.FileTrouble;
        }));
        return command;
    }

    private static string Lines(LogSnapshot log)
    {
        var lines = new StringWriter(CultureInfo.InvariantCulture);
        foreach (var session in log.Sessions)
        {
            lines.WriteLine($"{session.Id} {session.Start:yyyy-MM-dd HH:mm zzz} {session.Name} {session.Locality}".TrimEnd());
            foreach (var subject in log.Subjects.Where(subject => subject.SessionId == session.Id))
            {
                lines.WriteLine($"  {subject.Id} {LogHoldCommand.Name(subject)}: {log.Frames.Count(frame => frame.SubjectId == subject.Id)} frames");
            }
        }

        return lines.ToString();
    }

    private static string Json(LogSnapshot log) => JsonReport.Document(json => json
        .List("sessions", log.Sessions, session => json
            .Text("id", session.Id).Text("start", session.Start.ToString("O", CultureInfo.InvariantCulture))
            .Text("end", session.End?.ToString("O", CultureInfo.InvariantCulture)).Text("name", session.Name).Text("locality", session.Locality)
            .Number("latitudeDeg", session.Latitude).Number("longitudeDeg", session.Longitude).Number("coordinateUncertaintyM", session.CoordinateUncertainty))
        .List("subjects", log.Subjects, subject => json
            .Text("id", subject.Id).Text("session", subject.SessionId).Text("scientificName", subject.ScientificName)
            .Text("identificationQualifier", subject.IdentificationQualifier)
            .Number("heldS", subject.HoldEnd is { } end && subject.HoldStart is { } start ? (end - start).TotalSeconds : null)
            .Number("holdLimitS", subject.HoldLimit?.TotalSeconds))
        .List("frames", log.Frames, frame => json
            .Text("id", frame.Id).Text("subject", frame.SubjectId).Text("file", frame.FileName).Number("exposureTimeS", frame.ExposureTime)
            .Number("fNumber", frame.FNumber).Number("iso", frame.Iso).Number("focalLengthMm", frame.FocalLength).Number("pixelSizeUm", frame.MicrometresPerPixel))
        .List("measurements", log.Measurements, measurement => json
            .Text("id", measurement.Id).Text("subject", measurement.SubjectId).Text("type", measurement.Type).Text("value", measurement.Value).Text("unit", measurement.Unit)));
}
