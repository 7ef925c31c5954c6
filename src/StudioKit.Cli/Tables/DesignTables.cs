using System.Globalization;
using Spectre.Console;
using StudioKit.Planning.Exploring;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>Designs that no other beats, as tables on a terminal.</summary>
internal static class DesignTables
{
    public static void Write(DesignSearchResult result, bool isUsual, CommandHost host)
    {
        var console = TableConsole.For(host);
        var measures = result.Aim.Measures;
        string[] columns = ["", .. measures.Select(DesignText.Name), "against the kit", "what differs", "design"];
        var table = TableConsole.Table($"{result.Space.AsWritten.Kit!.Name}: designs that no other beats", columns);
        table.AddRow(["kit", .. Amounts(result, result.Own.Figures), result.Own.Verdict == DesignVerdict.Good ? "" : "does not count", "", result.Space.Own.ToString()]);
        foreach (var design in result.Shown)
        {
            table.AddRow(
            [
                design.Number.ToString(CultureInfo.InvariantCulture), .. Amounts(result, design.Figures), Markup.Escape(DesignText.AgainstOwn(design, result)),
                Markup.Escape(DesignText.Changes(design.Changes)) + Alike(design), design.Code.ToString(),
            ]);
        }

        console.Write(table);
        WriteEffects(result, console);
        console.WriteLine(string.Join("; ", measures.Select(measure => $"{DesignText.Name(measure)}: {DesignText.About(measure)}")) + ".");
        TableConsole.Notes(console, isUsual ? ["The kit marks nothing as open, so what usually is was varied; an 'explore' section says otherwise.", .. DesignText.Proof(result)] : DesignText.Proof(result));
    }

    private static void WriteEffects(DesignSearchResult result, IAnsiConsole console)
    {
        var table = TableConsole.Table("Which choice matters", "choice", "open", "a change of it alone");
        foreach (var effect in result.Effects)
        {
            table.AddRow(
                Markup.Escape(effect.Choice.Name), Markup.Escape(string.Join(", ", effect.Choice.Options.Select(option => option.Name))), Markup.Escape(DesignText.Effect(effect, result)));
        }

        console.Write(table);
    }

    private static IEnumerable<string> Amounts(DesignSearchResult result, DesignFigures? figures) =>
        result.Aim.Measures.Select(measure => Markup.Escape(DesignText.Amount(measure, figures?[measure], DesignText.CurrencyOf(result))));

    private static string Alike(ShownDesign design) => design.Alike.Count == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" (and {design.Alike.Count} alike)");
}
