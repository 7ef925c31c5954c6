using StudioKit.Field.Advice;
using StudioKit.Field.Ladders;
using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Advising;
using StudioKit.Sheets.Json;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>What a power ladder says: as text the verdict, what to turn and a picture; as JSON every number.</summary>
/// <param name="Map">The measured map.</param>
/// <param name="Power">Power that it is told for.</param>
internal sealed record LadderReport(MeasuredMarginMap Map, DialMark Power)
{
    /// <summary>What to turn where no kit tells of the flash.</summary>
    public WhiteAdvice? Advice { get; init; }

    /// <summary>What a plan makes of it; none without a kit.</summary>
    public FrameAdvice? Planned { get; init; }

    /// <summary>The map beside the plan's; none without a kit.</summary>
    public MarginComparison? Compared { get; init; }

    private IEnumerable<string> Turns => Planned is { } planned ? TestFrameText.Turns(planned) : Advice?.Sentences ?? [];

    public string Lines() => string.Join(
        Environment.NewLine,
        [
            LadderText.Verdict(Map, Power), .. Turns, .. Compared is null ? Array.Empty<string>() : [LadderText.Against(Compared, "calibrate")], "",
            $"White margin at {Power}, top of the frame above:", .. MarginPicture.Of(Map.Columns, Map.Rows, Map.MarginsAt(Power.Power)), MarginPicture.Legend, "", .. Map.Caveats,
        ]);

    public void Write(JsonReport json)
    {
        json.Count("columns", Map.Columns).Count("rows", Map.Rows).Text("powerInFullStops", Power.InFullStops).Number("power", Power.Power.Fraction).Number("responseSlope", Map.ResponseSlope)
            .List("cells", Map.Cells.Zip(Map.MarginsAt(Power.Power)), cell => json
                .Text("kind", MemberText.Of(cell.First.Kind)).Number("whiteMarginStops", cell.Second).Number("uncertaintyStops", cell.First.UncertaintyStops))
            .Section("toneCurve", () => json.Flag("learnt", Map.IsCurveLearnt).Flag("standard", Map.Curve.IsStandard).Number("uncertaintyStops", Map.Curve.PlusMinus)
                .Numbers("standardStops", Map.Curve.StandardStops).Numbers("lightStops", Map.Curve.LightStops));
        if (Compared is { } compared)
        {
            json.Numbers("plannedStops", compared.Simulated).Numbers("differenceStops", compared.Difference)
                .Number("meanDifferenceStops", compared.MeanStops).Number("spreadStops", compared.SpreadStops);
        }

        PhotoReport.Write(json, Advice, Planned, [.. Turns]);
        json.Texts("caveats", Map.Caveats);
    }
}
