using System.Globalization;
using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Tables;

namespace StudioKit.Planning.Stations.OneWhite;

/// <summary>The conformity of several stations as a table for a spreadsheet, a row for each.</summary>
public static class CommonWhiteTable
{
    private static readonly string[] Header =
    [
        "station", "set-up", "framing", "pitch [°]", "measured at power", "measured margin [stops]", "measured ± [stops]", "light against plan [stops]", "power before", "iso before", "f-number before",
        "margin before [stops]", "before ± [stops]", "power after", "iso after", "f-number after", "margin after [stops]", "after ± [stops]", "common margin [stops]", "tolerance [stops]",
        "deviation [stops]", "accepted to [stops]", "probability within", "within",
    ];

    /// <summary>The table, its first row with the columns' names.</summary>
    /// <param name="white">The stations.</param>
    public static string Of(CommonWhite white)
    {
        ArgumentNullException.ThrowIfNull(white);
        return string.Concat(white.Stations.Select(station => CsvText.Row([.. Row(white, station)])).Prepend(CsvText.Row(Header)));
    }

    private static IEnumerable<string> Row(CommonWhite white, StationWhite station) =>
    [
        station.Name, station.Measured.Exposure.SetUp, station.Measured.Exposure.Framing.Name, Number(station.Measured.Pitch.Degrees), station.MeasuredAt.Nominal,
        Number(station.Measured.Frame.Darkest!.Value.Value), Number(station.Measured.Uncertainty.Value), Number(station.Gives.Value), .. Set(Promise.Of(station.Measured.Exposure)),
        Number(station.Before.Margin.Value), Number(station.Before.Uncertainty.Value), .. station.Advice is { } advice ? Set(advice.Promise) : ["", "", ""],
        Number(station.After?.Margin.Value), Number(station.After?.Uncertainty.Value), Number(white.Margin.Value), Number(white.Tolerance.Value), Number(station.After?.Deviation.Value),
        Number(station.AcceptedTo?.Value), Number(station.After?.Probability), MemberText.Of(station.Decision),
    ];

    private static IEnumerable<string> Set(Promise set) =>
        [set.Lights.First(light => light.Role.IsBackground()).Mark.Nominal, Number(set.Iso.Value), Number(set.Aperture.Value)];

    private static string Number(double? number) => number?.ToString("0.###", CultureInfo.InvariantCulture) ?? "";
}
