using System.Globalization;
using StudioKit.Field.Advice;
using StudioKit.Field.Ladders;
using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Tables;

/// <summary>What a power ladder says, as text and as JSON, beside what the plan expects where there is one.</summary>
internal static class LadderReport
{
    public static string Lines(MeasuredMarginMap map, DialMark power, WhiteAdvice? advice, MarginComparison? compared)
    {
        var margins = map.MarginsAt(power.Power);
        List<string> lines =
        [
            $"White margin in stops at power {power}, measured; '>' is at least, '?' unknown:",
            .. Rows(map, i => Measured(map.Cells[i].Kind, margins[i])),
        ];
        if (compared is not null)
        {
            lines.AddRange(["", "Planned:", .. Rows(map, i => Signed(compared.Simulated[i]))]);
            lines.AddRange(["", "Measured less planned:", .. Rows(map, i => Signed(compared.Difference[i])), "", Verdict(compared)]);
        }

        return string.Join(Environment.NewLine, [.. lines, "", .. advice?.Sentences ?? [], .. map.Caveats]);
    }

    public static void Write(JsonReport json, MeasuredMarginMap map, DialMark power, WhiteAdvice? advice, MarginComparison? compared)
    {
        json.Count("columns", map.Columns).Count("rows", map.Rows).Text("powerInFullStops", power.InFullStops).Number("power", power.Power.Fraction).Number("responseSlope", map.ResponseSlope)
            .List("cells", map.Cells.Zip(map.MarginsAt(power.Power)), cell => json
                .Text("kind", MemberText.Of(cell.First.Kind)).Number("whiteMarginStops", cell.Second).Number("uncertaintyStops", cell.First.UncertaintyStops));
        if (compared is not null)
        {
            json.Numbers("plannedStops", compared.Simulated).Numbers("differenceStops", compared.Difference)
                .Number("meanDifferenceStops", compared.MeanStops).Number("spreadStops", compared.SpreadStops);
        }

        PhotoReport.Write(json, advice);
        json.Texts("caveats", map.Caveats);
    }

    private static string Verdict(MarginComparison compared) => double.IsFinite(compared.MeanStops)
        ? Text($"On average {compared.MeanStops:+0.00;-0.00} stop against the plan (light, sheet or clip point: calibrate), and {compared.SpreadStops:0.00} stop about that (place or beam of the flash).")
        : "Nothing could be compared: no cell was seen under clipping.";

    private static IEnumerable<string> Rows(MeasuredMarginMap map, Func<int, string> cell) =>
        Enumerable.Range(0, map.Rows).Select(row => string.Concat(Enumerable.Range(0, map.Columns).Select(column => cell((row * map.Columns) + column))));

    private static string Measured(LadderCellKind kind, double margin) => kind switch
    {
        LadderCellKind.Unknown => "     ?",
        LadderCellKind.AtMost => Text($" >{margin,4:0.0}"),
        _ => Signed(margin),
    };

    private static string Signed(double stops) => double.IsFinite(stops) ? Text($"{stops,6:+0.0;-0.0}") : "     ?";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
