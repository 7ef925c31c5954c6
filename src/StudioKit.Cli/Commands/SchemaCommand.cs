using System.CommandLine;
using System.Text;
using StudioKit.Cli.Files;
using StudioKit.Kits;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit schema</c>: prints what kit files may hold, for editors and for people.</summary>
internal static class SchemaCommand
{
    private const string Text =
        """
        Prints the JSON Schema of kit files, with which an editor completes and checks them.

        Example: studiokit schema --out kit.schema.json
        then put  # yaml-language-server: $schema=kit.schema.json  at the top of a kit.

        To read about every section and key with its unit, bounds and default: studiokit schema --as-page --out kit.md
        """;

    public static Command Create(CommandHost host)
    {
        var output = new Option<string?>("--out") { Description = "Write it to this file, e.g. kit.schema.json; it is printed where left out.", HelpName = "file" };
        var page = new Option<bool>("--as-page") { Description = "Print a page for people instead, in Markdown: every section and key with its unit, bounds and default." };
        var force = ForceOption.Create();
        var command = new Command("schema", Text) { output, page, force };
        command.SetAction(parsed =>
        {
            var schema = parsed.GetValue(page) ? KitReference.Write() : KitSchema.Write();
            if (parsed.GetValue(output) is { } path)
            {
                host.Output.WriteLine(OutputFiles.Write(host, parsed.GetValue(force), [], [(path, Encoding.UTF8.GetBytes(schema))])[0]);
            }
            else
            {
                host.Output.WriteLine(schema);
            }

            return (int)ExitCode.Done;
        });
        return command;
    }
}
