using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Kits;
using StudioKit.Physics;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit check</c>: reads a kit and says everything that is wrong with it.</summary>
internal static class CheckCommand
{
    private const string Text =
        """
        Reads a kit file and says everything that is wrong with it, with line and column, and what would be accepted.

        Example: studiokit check kits/fen-edge.yaml --defaults
        """;

    public static Command Create(CommandHost host)
    {
        var kit = KitInput.Argument();
        var defaults = new Option<bool>("--defaults") { Description = "Also list every value that the kit leaves out, and what is taken for it." };
        var json = JsonOption.Create();
        var command = new Command("check", Text) { kit, defaults, json };
        command.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(kit);
            var read = KitInput.Read(path, host);
            if (parsed.GetValue(json))
            {
                host.Output.WriteLine(Json(path, read));
            }
            else if (!read.HasErrors)
            {
                host.Output.WriteLine($"{path}: the kit '{read.Kit!.Name}' reads without errors.");
                WriteDefaults(host, parsed.GetValue(defaults) ? read.Defaults : []);
            }

            return (int)(read.HasErrors ? ExitCode.BadInput : ExitCode.Done);
        });
        return command;
    }

    private static void WriteDefaults(CommandHost host, ValueList<DefaultUsed> defaults)
    {
        if (defaults.Count > 0)
        {
            host.Output.WriteLine(TextLines.Of([.. defaults.Select(entry => (entry.Path, entry.Value))], []));
        }
    }

    private static string Json(string path, KitReadResult read) => JsonReport.Document(json => json
        .Text("file", path)
        .Text("kit", read.Kit?.Name)
        .Flag("sound", !read.HasErrors)
        .List("diagnostics", read.Diagnostics, diagnostic => json
            .Text("code", diagnostic.Code)
            .Text("severity", MemberText.Of(diagnostic.Severity))
            .Text("file", diagnostic.File)
            .Count("line", diagnostic.Line)
            .Count("column", diagnostic.Column)
            .Text("message", diagnostic.Message)
            .Text("hint", diagnostic.Hint))
        .List("defaults", read.Defaults, entry => json.Text("path", entry.Path).Text("value", entry.Value)));
}
