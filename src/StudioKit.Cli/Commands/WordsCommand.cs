using System.CommandLine;
using Spectre.Console;
using StudioKit.Cli.Tables;
using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Sources;
using StudioKit.Planning;
using StudioKit.Sheets.Json;
using StudioKit.Wording;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit words</c>: the words of the trade, and how bright places are.</summary>
internal static class WordsCommand
{
    // The word that asks for the whole table of light values.
    private const string Light = "light";

    private const string Text =
        """
        Prints the words of the trade as kits, cards and commands use them, and a table of how bright places are, for a plan made before anybody metered.

        Example: studiokit words margin
        Example: studiokit words light
        """;

    public static Command Create(CommandHost host)
    {
        var word = new Argument<string?>("word")
        {
            Description = "Only entries and places with this word, e.g. kerf, shade, or light for the whole table of light values; everything where left out.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var json = JsonOption.Create();
        var command = new Command("words", Text) { word, json };
        command.SetAction(parsed =>
        {
            var wanted = parsed.GetValue(word) ?? "";
            var (entries, scenes) = (Glossary.Find(wanted), Scenes(wanted.Trim()));
            if (parsed.GetValue(json))
            {
                host.Output.WriteLine(Json(entries, scenes));
            }
            else
            {
                Print(wanted, entries, scenes, host);
            }

            return (int)ExitCode.Done;
        });
        return command;
    }

    private static IReadOnlyList<SceneLight> Scenes(string word) => word.Equals(Light, StringComparison.OrdinalIgnoreCase)
        ? SceneLightTable.All
        : [.. SceneLightTable.All.Where(scene => scene.Scene.Contains(word, StringComparison.OrdinalIgnoreCase))];

    private static double Lux(Physics.Exposure.ExposureValue value) => LightMeter.IlluminanceOf(value).Lux;

    private static void Print(string wanted, IReadOnlyList<GlossaryEntry> entries, IReadOnlyList<SceneLight> scenes, CommandHost host)
    {
        var console = TableConsole.For(host);
        if (entries.Count > 0)
        {
            var words = TableConsole.Table("Words", "word", "what it means here");
            foreach (var entry in entries)
            {
                words.AddRow(Markup.Escape(entry.Term), Markup.Escape(entry.Meaning));
            }

            console.Write(words);
        }

        if (scenes.Count > 0)
        {
            PrintScenes(console, scenes);
        }

        if (entries.Count + scenes.Count == 0)
        {
            var meant = NearestName.Of(wanted, Glossary.All.Select(entry => entry.Term)) is { } nearest ? $" Did you mean '{nearest}'?" : "";
            host.Error.WriteLine($"studiokit: nothing here says '{wanted}'.{meant} 'studiokit words' prints everything.");
        }
    }

    private static void PrintScenes(IAnsiConsole console, IReadOnlyList<SceneLight> scenes)
    {
        var table = TableConsole.Table("Light values", "place", "EV at ISO 100", "lux on a flat receptor");
        foreach (var scene in scenes)
        {
            table.AddRow(
                Markup.Escape(scene.Scene), Range(AmbientText.Figure(scene.Lowest), AmbientText.Figure(scene.Highest)),
                Range(MeasureFormat.IlluminanceFigure(LightMeter.IlluminanceOf(scene.Lowest)), MeasureFormat.IlluminanceFigure(LightMeter.IlluminanceOf(scene.Highest))));
        }

        console.Write(table);
        TableConsole.Notes(console, scenes.Select(scene => $"Places: {Bibliography.Cite(scene.SourceKey, scene.SourceLocator)}").Distinct(StringComparer.Ordinal));
        console.WriteLine($"Lux follow from the exposure value: 2.5 lx · 2^EV, with the incident-light constant C = 250. {Bibliography.Cite("Iso2720", "C for a flat receptor")}");
    }

    private static string Range(string least, string most) => least == most ? least : $"{least} to {most}";

    private static string Json(IReadOnlyList<GlossaryEntry> entries, IReadOnlyList<SceneLight> scenes) => JsonReport.Document(json => json
        .List("words", entries, entry => json.Text("word", entry.Term).Text("meaning", entry.Meaning))
        .List("lightValues", scenes, scene => json
            .Text("scene", scene.Scene)
            .Number("lowestEvAtIso100", scene.Lowest.AtIso100).Number("highestEvAtIso100", scene.Highest.AtIso100)
            .Number("lowestLx", Lux(scene.Lowest)).Number("highestLx", Lux(scene.Highest))
            .Text("source", Bibliography.Cite(scene.SourceKey, scene.SourceLocator))));
}
