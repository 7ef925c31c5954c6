using System.Globalization;
using Spectre.Console;
using StudioKit.Planning;

namespace StudioKit.Cli.Tables;

/// <summary>A session as a table on a terminal.</summary>
internal static class SessionTable
{
    public static void Write(IAnsiConsole console, SessionPlan session)
    {
        var table = TableConsole.Table("Session", "step", "card", "time", "frames", "flashes");
        table.Columns[2].RightAligned();
        table.Columns[3].RightAligned();
        table.Columns[4].RightAligned();
        foreach (var step in session.Steps)
        {
            table.AddRow(
                Markup.Escape(step.What), Markup.Escape(step.Card), step.Time.Seconds > 0 ? PlanFormat.Minutes(step.Time) : "", Number(step.Frames), Number(step.Flashes));
        }

        table.AddRow("one round", "", PlanFormat.Minutes(session.Time), Number(session.Steps.Sum(step => step.Frames)), Number(session.Steps.Sum(step => step.Flashes)));
        console.Write(table);
        TableConsole.Notes(console, session.Notes.Prepend(SessionPlan.Rule));
    }

    private static string Number(int count) => count == 0 ? "" : count.ToString(CultureInfo.InvariantCulture);
}
