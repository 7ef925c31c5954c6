using StudioKit.Field.Ladders;
using StudioKit.Physics.Exposure;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Svg;

namespace StudioKit.Cli.Commands;

/// <summary>The map of a power ladder as a picture file.</summary>
internal static class LadderDrawing
{
    public static byte[] Svg(MeasuredMarginMap map, FlashPower power, MarginComparison? compared)
    {
        var measured = new FrameMap($"Measured white margin at {power.Nominal}, stops", map.Columns, map.Rows, map.MarginsAt(power));
        return SvgWriter.Write(FrameMapDrawing.Of(compared is null
            ? [measured]
            :
            [
                measured,
                new FrameMap($"Planned white margin at {power.Nominal}, stops", map.Columns, map.Rows, compared.Simulated),
                new FrameMap("Measured less planned, stops", map.Columns, map.Rows, compared.Difference) { IsDifference = true },
            ]));
    }
}
