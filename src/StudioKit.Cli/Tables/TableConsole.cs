using Spectre.Console;
using StudioKit.Cli.Running;
using StudioKit.Physics.Packing;

namespace StudioKit.Cli.Tables;

/// <summary>Tables for a person or a pipe: no colour and a fixed width where nobody looks.</summary>
internal static class TableConsole
{
    public static IAnsiConsole For(CommandHost host)
    {
        var coloured = host.OutputIsTerminal && host.ColourAllowed;
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = new AnsiConsoleOutput(coloured && host.Output is HarmlessWriter terminal ? terminal.Raw : host.Output),
            Ansi = coloured ? AnsiSupport.Detect : AnsiSupport.No,
            ColorSystem = coloured ? ColorSystemSupport.Detect : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
        });
        console.Profile.Width = host.Width;
        console.Pipeline.Attach(new HarmlessRenderHook());
        return console;
    }

    public static Table Table(string title, params string[] columns)
    {
        var table = new Table { Border = TableBorder.Simple, Title = new TableTitle(Markup.Escape(title)) };
        foreach (var column in columns)
        {
            table.AddColumn(new TableColumn(Markup.Escape(column)));
        }

        return table;
    }

    /// <summary>Sentences under a table, each on a line of its own.</summary>
    public static void Notes(IAnsiConsole console, IEnumerable<string> notes)
    {
        foreach (var note in notes)
        {
            console.WriteLine(note);
        }
    }

    /// <summary>What follows a mass that nobody weighed.</summary>
    public static string Origin(MassOrigin origin) => origin switch
    {
        MassOrigin.Weighed => "",
        MassOrigin.FromGeometry => " computed",
        _ => " assumed",
    };
}
