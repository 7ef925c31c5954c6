using StudioKit.Field.Ladders;
using StudioKit.Physics.Exposure;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Svg;

namespace StudioKit.Cli.Commands;

/// <summary>The map of a power ladder as a picture file.</summary>
internal static class LadderDrawing
{
    public static byte[] Svg(MeasuredMarginMap map, DialMark power, MarginComparison? compared)
    {
        var measured = new FrameMap($"Measured white margin at {power}, stops", map.Columns, map.Rows, map.MarginsAt(power.Power));
        return SvgWriter.Write(FrameMapDrawing.Of(compared is null
            ? [measured]
            :
            [
                measured,
                new FrameMap($"Planned white margin at {power}, stops", map.Columns, map.Rows, compared.Simulated),
                new FrameMap("Measured less planned, stops", map.Columns, map.Rows, compared.Difference) { IsDifference = true },
            ]));
    }
}
