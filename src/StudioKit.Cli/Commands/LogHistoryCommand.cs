using System.CommandLine;
using System.Globalization;
using StudioKit.Cli.Records;
using StudioKit.Field;
using StudioKit.Field.Log;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log history</c>: what was changed, and when.</summary>
internal static class LogHistoryCommand
{
    private const string Text =
        """
        Tells what was changed and when, with what was there before: of the whole log, or of one record, taken out ones too by their short identifier.

        Example: studiokit log history
        Example: studiokit log history d4t --json
        """;

    public static Command Create(CommandHost host, Option<string> file)
    {
        var reference = References.Optional("record", "Record, e.g. d4t; the whole log where left out.");
        var json = JsonOption.Create();
        var command = new Command("history", Text) { reference, json };
        command.SetAction(parsed => (int)OpenLog.ToRead(host, parsed.GetRequiredValue(file), log =>
        {
            var (history, index) = (log.History(), log.Index());
            return OpenLog.With(host, About(history, index, parsed.GetValue(reference)), changes =>
            {
                host.Output.Write(parsed.GetValue(json) ? Json(changes) + Environment.NewLine : string.Concat(changes.Select(change => HistoryLines.Of(change, index))));
                return ExitCode.Done;
            });
        }));
        return command;
    }

    private static FieldResult<List<LogChange>> About(IReadOnlyList<LogChange> history, LogIndex index, string? reference)
    {
        if (reference is null)
        {
            return history.ToList();
        }

        // A record that was taken out is found by its short identifier alone.
        var of = Of(history, reference);
        if (of.Count > 0)
        {
            return of;
        }

        var found = index.Find(reference);
        return found.IsSound ? Of(history, found.Value.ShortId) : found.Diagnostics[0];
    }

    private static List<LogChange> Of(IReadOnlyList<LogChange> history, string shortId) =>
    [
        .. history.Select(change => change with { Records = [.. change.Records.Where(record => string.Equals(record.ShortId, shortId, StringComparison.OrdinalIgnoreCase))] })
            .Where(change => change.Records.Count > 0),
    ];

    private static string Json(List<LogChange> changes) => JsonReport.Document(json => json.List("changes", changes, change => json
        .Number("number", change.Number).Text("at", change.At.ToString("O", CultureInfo.InvariantCulture)).Text("action", change.Action.ToString().ToLowerInvariant())
        .Number("target", change.Target)
        .List("records", change.Records, record => json
            .Text("shortId", record.ShortId).Text("kind", record.Kind.ToString().ToLowerInvariant()).Text("beforeId", record.BeforeId).Text("afterId", record.AfterId)
            .List("fields", record.Fields, field => json.Text("field", field.Field).Text("before", field.Before).Text("after", field.After)))));
}
