using Spectre.Console;
using StudioKit.Planning;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>Sun and light of a day as tables on a terminal.</summary>
internal static class DayTable
{
    public static void Write(IAnsiConsole console, DayPlan day)
    {
        var sun = TableConsole.Table($"Day: {DayText.Title(day)}", "time", "sun over the horizon", "sun stands", "shadow of 1 m", "shade falls to");
        var light = TableConsole.Table("Light to expect, in EV at ISO 100", "time", "in sun", "under cloud", "in shade", "can be photographed");
        foreach (var hour in day.Hours)
        {
            sun.AddRow(
                DayText.Time(hour.Minute), MeasureFormat.Degrees(hour.Height), DayText.Direction(hour.Azimuth), DayText.Shadow(hour),
                hour.ShadowOverHeight is null ? "" : DayText.Direction(hour.ShadowDirection));
            light.AddRow(
                DayText.Time(hour.Minute), DayText.Light(hour.Lights[0]), DayText.Light(hour.Lights[1]), DayText.Light(hour.Lights[2]), Markup.Escape(DayText.SetUps(hour)));
        }

        console.Write(sun);
        console.Write(light);
        TableConsole.Notes(console, [DayText.Events(day), DayText.Basis(day)]);
    }
}
