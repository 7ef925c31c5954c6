using System.CommandLine;
using StudioKit.Cli.Records;
using StudioKit.Field.Log;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log measure</c>: adds a measurement.</summary>
internal static class LogMeasureCommand
{
    private const string Text =
        """
        Adds a measurement on a subject. Prints its short identifier.

        Example: studiokit log measure last "body length" 18.5 --unit mm --accuracy 0.2
        """;

    public static Command Create(CommandHost host, Option<string> file)
    {
        var subject = References.Subject();
        var (type, value) = (new Argument<string>("type") { Description = "What was measured, e.g. \"body length\"." }, new Argument<string>("value") { Description = "Its value, e.g. 18.5." });
        value.Validators.Add(result => RecordFields<FieldMeasurement>.RefuseComma("<value>", result));
        var fields = MeasurementFields.Create(host);
        var command = new Command("measure", Text) { subject, type, value };
        fields.AddTo(command);
        command.SetAction(parsed => (int)OpenLog.ToWrite(host, parsed.GetRequiredValue(file), log =>
            OpenLog.With(host, log.Index().Subject(parsed.GetRequiredValue(subject)), found => LogCommand.Report(
                host,
                log,
                log.Save(fields.Apply(parsed, new FieldMeasurement { SubjectId = found.Id, Type = parsed.GetRequiredValue(type), Value = parsed.GetRequiredValue(value) })),
                measurement => measurement.Id))));
        return command;
    }
}
