using Spectre.Console;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Stations.OneWhite;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>Several stations and their one white, as a table on a terminal.</summary>
internal static class CommonWhiteTables
{
    public static void Write(CommonWhite white, CommandHost host)
    {
        var console = TableConsole.For(host);
        var table = TableConsole.Table(CommonWhiteText.Title(white), "station", "measured", "set now", "margin now", "to set", "margin then", "off", "within");
        foreach (var station in white.Stations)
        {
            var exposure = station.Measured.Exposure;
            table.AddRow([.. Cells(station).Prepend($"{station.Name}: {exposure.SetUp}, {exposure.Framing.Name}").Select(Markup.Escape)]);
        }

        console.Write(table);
        TableConsole.Notes(console, CommonWhiteText.Notes(white));
    }

    private static IEnumerable<string> Cells(StationWhite station) =>
    [
        CommonWhiteText.Measured(station), CommonWhiteText.Set(Promise.Of(station.Measured.Exposure)), CommonWhiteText.Level(station.Before),
        station.Advice is { } advice ? CommonWhiteText.Set(advice.Promise) : "nothing helps", CommonWhiteText.Level(station.After),
        station.After is { } after ? Rounded.WithSign(after.Deviation.Value, 2) : "", CommonWhiteText.Decision(station.Decision),
    ];
}
