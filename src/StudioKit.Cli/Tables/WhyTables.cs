using System.Globalization;
using Spectre.Console;
using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>The light budget of every flash of an exposure, line by line.</summary>
internal static class WhyTables
{
    public static void Write(IReadOnlyList<ExposurePlan> exposures, AdviceBook advice, CommandHost host)
    {
        var console = TableConsole.For(host);
        var sources = exposures.SelectMany(exposure => exposure.Lights).SelectMany(light => light.Budget.Lines)
            .Select(line => line.SourceKey).Distinct(StringComparer.Ordinal).ToList();
        foreach (var exposure in exposures)
        {
            console.WriteLine($"{exposure.SetUp}, {exposure.Framing.Name}: {exposure.Aperture.Nominal} (effective {exposure.EffectiveAperture.Nominal}), {exposure.Shutter.Nominal}, {exposure.Iso.Nominal}");
            foreach (var light in exposure.Lights)
            {
                WriteLight(console, light, sources);
            }

            TableConsole.Notes(console, Notes(exposure, advice));
            console.WriteLine();
        }

        TableConsole.Notes(console, sources.Select((key, place) =>
            string.Create(CultureInfo.InvariantCulture, $"[{place + 1}] {Bibliography.Entries[key].Citation}")));
    }

    private static void WriteLight(IAnsiConsole console, LightPlan light, List<string> sources)
    {
        var title = $"{light.Flash}, {MemberText.Of(light.Role)}: {light.PowerText} at {DistanceFormat.Centimetres(light.Distance)}, {PlanFormat.Zoom(light.Zoom)}";
        var table = TableConsole.Table(title, "", "stops", "±", "detail", "source");
        table.Columns[1].RightAligned();
        table.Columns[2].RightAligned();
        foreach (var line in light.Budget.Lines)
        {
            table.AddRow(
                Markup.Escape(line.Item), Signed(line.Stops), Spread(line.Uncertainty), Markup.Escape(line.Detail),
                Markup.Escape(string.Create(CultureInfo.InvariantCulture, $"[{sources.IndexOf(line.SourceKey) + 1}] {line.SourceLocator}")));
        }

        table.AddRow(
            light.Role.IsBackground() ? "white margin" : "against correct exposure",
            Signed(light.Budget.Total), Spread(light.Budget.Uncertainty), $"first bracket {MeasureFormat.ThreeDigits(Math.Round(light.Budget.Bracket(light.PowerStep).Value, 2))} stop either side", "sum of the lines, ± in quadrature");
        console.Write(table);
    }

    private static IEnumerable<string> Notes(ExposurePlan exposure, AdviceBook advice)
    {
        yield return $"Ambient light EV {exposure.Ambient.AtIso100.ToString("0.#", CultureInfo.InvariantCulture)}: {Signed(exposure.AmbientLevel)} stops against its correct exposure. ISO costs {MeasureFormat.ThreeDigits(Math.Round(exposure.IsoAboveBase.Value, 2))} stops of noise above the camera's lowest.";
        yield return $"The whole exposure: give or take {MeasureFormat.ThreeDigits(Math.Round(exposure.Uncertainty.Value, 2))} stop.";
        yield return $"{VerdictText.Word(exposure)}. {VerdictText.Chances(exposure)}. {VerdictText.Missed(exposure)}".TrimEnd();
        if (exposure.EdgeSpill is { } spill)
        {
            yield return EdgeSpillText.Of(spill);
        }

        if (exposure.StrayStems is { } stems)
        {
            yield return StrayStemText.OfCard(stems);
        }

        foreach (var warning in WarningText.Of(exposure, advice))
        {
            yield return warning;
        }

        foreach (var change in advice.Mending(exposure))
        {
            yield return $"  or {AdviceText.Of(exposure, change)}";
        }
    }

    private static string Signed(Stops stops) => stops.Value.ToString("+0.00;-0.00;0.00", CultureInfo.InvariantCulture);

    private static string Spread(Stops stops) => stops.Value == 0 ? "" : stops.Value.ToString("0.00", CultureInfo.InvariantCulture);
}
