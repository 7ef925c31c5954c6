using System.CommandLine;
using Spectre.Console;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Kits;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit parts</c>: lists what a kit can name instead of describing it.</summary>
internal static class PartsCommand
{
    private const int FiguresShown = 5;

    private const string Text =
        """
        Lists the parts that a kit can name instead of describing them: cameras, cells, fittings, pipes, sheets, each with its main figures and where they
        come from. Name one under 'part:', or in place of the whole section, and write beside it what differs.

        Example: studiokit parts pvc --kind pipes
        Example: studiokit parts --kit kits/fen-edge.yaml --json
        """;

    public static Command Create(CommandHost host)
    {
        var word = new Argument<string?>("word")
        {
            Description = "Only parts with this word in name, title or source, e.g. opal; all of them where left out.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var kind = new Option<string?>("--kind") { Description = $"Only one kind, e.g. pipes, of {string.Join(", ", PartsCatalogue.Kinds)}; every kind where left out.", HelpName = "kind" };
        kind.AcceptOnlyFromAmong([.. PartsCatalogue.Kinds]);
        var kit = new Option<string?>("--kit") { Description = "Also list the folder 'parts' beside this kit, e.g. kits/fen-edge.yaml; only the library that comes along where left out.", HelpName = "file" };
        var json = JsonOption.Create();
        var command = new Command("parts", Text) { word, kind, kit, json };
        command.SetAction(parsed =>
        {
            // The kit itself may be still to be written.
            if (parsed.GetValue(kit) is { } beside && !File.Exists(beside) && !Directory.Exists(Path.Combine(Path.GetDirectoryName(beside) ?? "", "parts")))
            {
                throw new FileTroubleException($"cannot read {beside}: there is no such kit, and no folder 'parts' beside it.");
            }

            var library = parsed.GetValue(kit) is { Length: > 0 } path ? PartsLibrary.BesideKit(path) : PartsLibrary.Embedded;
            IReadOnlyList<ListedPart> parts = [.. InputFile.Read(parsed.GetValue(kit) ?? "the parts library", _ => PartsCatalogue.Of(library))
                .Where(part => parsed.GetValue(kind) is not { } wanted || part.Kind == wanted)
                .Where(part => parsed.GetValue(word) is not { } wanted || part.Mentions(wanted))];
            Print(parts, parsed.GetValue(json), host);
            return (int)ExitCode.Done;
        });
        return command;
    }

    private static void Print(IReadOnlyList<ListedPart> parts, bool asJson, CommandHost host)
    {
        if (asJson)
        {
            host.Output.WriteLine(JsonReport.Document(json => json.List("parts", parts, part => json
                .Text("kind", part.Kind).Text("name", part.Name).Text("title", part.Title).Text("source", part.Source)
                .List("figures", part.Figures, figure => json.Text("key", figure.Key).Text("value", figure.Value)))));
            return;
        }

        if (parts.Count == 0)
        {
            host.Error.WriteLine("studiokit: no part is like that; 'studiokit parts' lists them all.");
        }

        var console = TableConsole.For(host);
        foreach (var kind in parts.GroupBy(part => part.Kind))
        {
            var table = TableConsole.Table(kind.Key, "name", "what it is", "main figures");
            table.Columns[0].NoWrap();
            foreach (var part in kind)
            {
                table.AddRow(Markup.Escape(part.Name), Markup.Escape(part.Title), Markup.Escape(Figures(part)));
            }

            console.Write(table);
            TableConsole.Notes(console, kind.GroupBy(part => part.Source).Select(same => $"Figures of {string.Join(", ", same.Select(part => part.Name))}: {(same.Key.Length > 0 ? same.Key : "no source given")}."));
        }
    }

    private static string Figures(ListedPart part) =>
        string.Join("; ", part.Figures.Take(FiguresShown).Select(figure => $"{figure.Key} {figure.Value}")) + (part.Figures.Count > FiguresShown ? "; …" : "");
}
