using StudioKit.Field.Ladders;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Advising;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine.Telling;

/// <summary>What a power ladder measures, in the words of the command line.</summary>
internal static class LadderTelling
{
    public static LadderAnswer Of(MeasuredMarginMap map, DialMark power, FrameAdvice? planned, MarginComparison compared) => new(
        LadderText.Verdict(map, power), planned is null ? [] : TestFrameText.Turns(planned), LadderText.Against(compared, "keep the correction"), [])
    {
        Columns = map.Columns,
        Rows = map.Rows,
        Cells = [.. map.MarginsAt(power.Power).Select(Cell)],
        Caveats = map.Caveats,
    };

    private static LadderSpot Cell(double margin) => margin switch
    {
        double.NaN => new("unknown", "?", "not known"),
        < -1 => new("dark", "#", Said(margin)),
        < 0 => new("under", "−", Said(margin)),
        <= 1 => new("white", "", Said(margin)),
        _ => new("bright", "+", Said(margin)),
    };

    private static string Said(double margin) => Rounded.SignedStops(margin, 1);
}
