using System.CommandLine;
using System.Globalization;
using StudioKit.Field.Log;
using StudioKit.Kits;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log hold</c>: how long an animal is held.</summary>
internal static class LogHoldCommand
{
    public static Command Create(CommandHost host, Option<string> file) => new("hold", "Notes when an animal is taken up and let go, and warns at the limit.")
    {
        Start(host, file), Stop(host, file), Status(host, file),
    };

    private static Argument<string> Subject() => new("subject") { Description = "Identifier of the subject." };

    private static Command Start(CommandHost host, Option<string> file)
    {
        var subject = Subject();
        var limit = QuantityOption.Required<Duration>("--limit", "Most time it may be held, e.g. \"10 min\".", QuantityText.TryDuration);
        var command = new Command("start", "The animal is taken up now.") { subject, limit };
        command.SetAction(parsed => (int)LogCommand.With(host, parsed.GetRequiredValue(file), log =>
            LogCommand.Find(host, log, parsed.GetRequiredValue(subject)) is { } found
                ? LogCommand.Report(host, log.StartHold(found, TimeSpan.FromSeconds(Math.Round(parsed.GetRequiredValue(limit).Seconds))), kept => Text(log.Hold(kept)!))
                : ExitCode.BadInput));
        return command;
    }

    private static Command Stop(CommandHost host, Option<string> file)
    {
        var subject = Subject();
        var released = new Option<bool>("--released") { Description = "It was released where it was found.", DefaultValueFactory = _ => true };
        var command = new Command("stop", "The animal is let go now.") { subject, released };
        command.SetAction(parsed => (int)LogCommand.With(host, parsed.GetRequiredValue(file), log =>
            LogCommand.Find(host, log, parsed.GetRequiredValue(subject)) is { } found
                ? LogCommand.Report(host, log.StopHold(found, parsed.GetValue(released)), kept => Text(log.Hold(kept)!))
                : ExitCode.BadInput));
        return command;
    }

    // Exit code 1 at the limit, so that a script can ring a bell.
    private static Command Status(CommandHost host, Option<string> file)
    {
        var command = new Command("status", "Lists the animals held; exit code 1 when one is at its limit.");
        command.SetAction(parsed => (int)LogCommand.With(host, parsed.GetRequiredValue(file), log =>
        {
            var held = log.Read().Subjects.Select(subject => (Subject: subject, Hold: log.Hold(subject))).Where(entry => entry.Hold is { IsHeld: true }).ToList();
            held.ForEach(entry => host.Output.WriteLine($"{entry.Subject.Id} {Name(entry.Subject)}: {Text(entry.Hold!)}"));
            return held.Exists(entry => entry.Hold!.IsAtLimit) ? ExitCode.PlanFails : ExitCode.Done;
        }));
        return command;
    }

    public static string Name(FieldSubject subject) =>
        string.Join(' ', new[] { subject.ScientificName, subject.IdentificationQualifier, subject.VernacularName }.Where(part => part.Length > 0));

    private static string Text(HoldStatus hold)
    {
        var limit = hold.Limit is { } most ? string.Create(CultureInfo.InvariantCulture, $" of {most.TotalMinutes:0.#} min") : "";
        var warning = hold.IsAtLimit ? hold.IsHeld ? ": LET IT GO NOW" : ": longer than its limit" : "";
        return string.Create(CultureInfo.InvariantCulture, $"held {hold.Elapsed.TotalMinutes:0.0} min{limit}{warning}");
    }
}
