using System.CommandLine;
using System.Globalization;
using StudioKit.Cli.Records;
using StudioKit.Field;
using StudioKit.Field.Log;
using StudioKit.FieldFiles.Log;
using StudioKit.Kits;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log hold</c>: how long an animal is held.</summary>
internal static class LogHoldCommand
{
    private const string Text =
        """
        Notes when an animal is taken up and let go, and warns at the limit.

        Example: studiokit log hold start last --limit "10 min"
        Example: studiokit log hold stop
        """;

    public static Command Create(CommandHost host, Option<string> file) => new("hold", Text) { Start(host, file), Stop(host, file), Status(host, file) };

    public static string Name(FieldSubject subject) =>
        string.Join(' ', new[] { subject.ScientificName, subject.IdentificationQualifier, subject.VernacularName }.Where(part => part.Length > 0));

    private static Command Start(CommandHost host, Option<string> file)
    {
        var subject = References.Subject();
        var limit = QuantityOption.Required<Duration>("--limit", "Most time it may be held, e.g. \"10 min\".", QuantityText.TryDuration);
        var command = new Command("start", "The animal is taken up now.\n\nExample: studiokit log hold start last --limit \"10 min\"") { subject, limit };
        command.SetAction(parsed => (int)OpenLog.ToWrite(host, parsed.GetRequiredValue(file), log =>
            OpenLog.With(host, log.Index().Subject(parsed.GetRequiredValue(subject)), found =>
            {
                var code = Report(host, log, log.StartHold(found, TimeSpan.FromSeconds(Math.Round(parsed.GetRequiredValue(limit).Seconds))));
                TellOfEarlier(host, found, code);
                return code;
            })));
        return command;
    }

    // Pictures are matched by the hold that stands, and a rest between two holds is the animal's.
    private static void TellOfEarlier(CommandHost host, FieldSubject before, ExitCode code)
    {
        if (code == ExitCode.Done && before is { HoldStart: { } from, HoldEnd: { } until })
        {
            host.Error.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"It was held before, {from:yyyy-MM-dd HH:mm} to {until:HH:mm}: the history keeps that, but pictures of that time are no longer matched by it; log them with its name, or 'studiokit log undo'."));
        }
    }

    private static Command Stop(CommandHost host, Option<string> file)
    {
        var subject = References.Optional("subject", "The subject, as for start, e.g. d4t; the one that is held where left out.");
        var released = new Option<bool>("--released") { Description = "Whether it was released where it was found, e.g. --released false.", DefaultValueFactory = _ => true };
        var command = new Command("stop", "The animal is let go now.\n\nExample: studiokit log hold stop") { subject, released };
        command.SetAction(parsed => (int)OpenLog.ToWrite(host, parsed.GetRequiredValue(file), log =>
            OpenLog.With(host, parsed.GetValue(subject) is { } reference ? log.Index().Subject(reference) : OnlyHeld(log), found =>
                Report(host, log, log.StopHold(found, parsed.GetValue(released))))));
        return command;
    }

    // Exit code 1 at the limit, so that a script can ring a bell.
    private static Command Status(CommandHost host, Option<string> file)
    {
        var command = new Command("status", "Lists the animals held; exit code 1 when one is at its limit.\n\nExample: studiokit log hold status");
        command.SetAction(parsed => (int)OpenLog.ToRead(host, parsed.GetRequiredValue(file), log =>
        {
            var (held, index) = (Held(log), log.Index());
            held.ForEach(subject => host.Output.WriteLine($"{index.ShortId(subject.Id)} {Name(subject)}: {Words(log.Hold(subject)!)}"));
            if (held.Count == 0)
            {
                host.Error.WriteLine("No animal is held.");
            }

            return held.Exists(subject => log.Hold(subject)!.IsAtLimit) ? ExitCode.PlanFails : ExitCode.Done;
        }));
        return command;
    }

    private static List<FieldSubject> Held(FieldLog log) => [.. log.Read().Subjects.Where(subject => log.Hold(subject) is { IsHeld: true })];

    private static FieldResult<FieldSubject> OnlyHeld(FieldLog log) => Held(log) switch
    {
        [var only] => only,
        [] => new FieldDiagnostic("FLD418", "hold end", "No animal is held."),
        var several => new FieldDiagnostic("FLD472", "subject", "Several animals are held; name one:", string.Join(", ", several.Select(subject => log.Index().Entry(subject.Id)))),
    };

    private static ExitCode Report(CommandHost host, FieldLog log, FieldResult<FieldSubject> saved) => OpenLog.With(host, saved, subject =>
    {
        host.Output.WriteLine(Words(log.Hold(subject)!));
        host.Error.WriteLine(RecordWords.Of(log.Index().Entry(subject.Id)!));
        return ExitCode.Done;
    });

    private static string Words(HoldStatus hold)
    {
        var limit = hold.Limit is { } most ? string.Create(CultureInfo.InvariantCulture, $" of {most.TotalMinutes:0.#} min") : "";
        var warning = hold.IsAtLimit ? hold.IsHeld ? ": LET IT GO NOW" : ": longer than its limit" : "";
        return string.Create(CultureInfo.InvariantCulture, $"held {hold.Elapsed.TotalMinutes:0.0} min{limit}{warning}");
    }
}
