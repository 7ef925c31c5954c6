using System.Globalization;
using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Tables;

/// <summary>What test frames say, as text and as JSON.</summary>
internal static class PhotoReport
{
    public static string Lines(FrameAnalysis frame, WhiteAdvice? advice)
    {
        // Figures that mean nothing are not printed.
        if (frame.Doubt is { } doubt)
        {
            return TextLines.Of([("frame", frame.Path), ("DOUBTFUL", doubt)], [.. advice?.Sentences ?? [], .. frame.Caveats]);
        }

        List<(string, string)> lines =
        [
            ("frame", frame.Path),
            ("background", Text($"{frame.BackgroundShare:P0} of the frame, {frame.ClippedShare:P1} of it white")),
            ("missing", frame.StopsMissing == 0 ? "nothing: all of it is white" : Text($"{frame.StopsMissing:0.0} stop at the darkest")),
            ("unevenness", Text($"{frame.UnevennessStops:0.0} stop{(frame.UnevennessIsLeast ? " or more" : "")}")),
            .. frame.Regions.Where(region => region.ClippedShare < 0.995 && region.StopsMissing > 0)
                .Select(region => ("  " + region.Name, Text($"{region.ClippedShare:P0} white, {region.StopsMissing:0.0} stop under"))),
        ];
        if (frame.Tint is { } tint)
        {
            lines.Add(("tint", Text($"red {tint.RedStops:+0.00;-0.00} stop, blue {tint.BlueStops:+0.00;-0.00} stop against green")));
        }

        if (frame.Veil is { } veil)
        {
            lines.Add(("darkest of subject", Text($"{veil.ShareOfSaturation:P1} of white, {veil.StopsUnderClipping:0.0} stop under; the veil is at most that")));
        }

        return TextLines.Of(lines, [.. advice?.Sentences ?? [], .. frame.Caveats]);
    }

    public static void Write(JsonReport json, FrameAnalysis frame, WhiteAdvice? advice)
    {
        json.Text("file", frame.Path)
            .Count("widthPixels", frame.Width).Count("heightPixels", frame.Height)
            .Number("backgroundShare", frame.BackgroundShare).Number("clippedShare", frame.ClippedShare)
            .Number("missingStops", frame.StopsMissing).Text("doubt", frame.Doubt)
            .Number("unevennessStops", frame.UnevennessStops).Flag("unevennessIsLeast", frame.UnevennessIsLeast)
            .Number("tintRedStops", frame.Tint?.RedStops).Number("tintBlueStops", frame.Tint?.BlueStops)
            .Number("veilAtMostShare", frame.Veil?.ShareOfSaturation)
            .List("regions", frame.Regions, region => json
                .Text("name", region.Name).Number("clippedShare", region.ClippedShare).Number("missingStops", region.StopsMissing))
            .Section("sharpness", () => json
                .Count("columns", frame.Sharpness.Columns).Count("rows", frame.Sharpness.Rows).Numbers("relative", frame.Sharpness.Relative));
        Write(json, advice);
        json.Texts("caveats", frame.Caveats);
    }

    public static void Write(JsonReport json, WhiteAdvice? advice) => json
        .Number("changeStops", advice?.ChangeStops).Number("newPower", advice?.Power?.Fraction).Text("newPowerMark", advice?.Mark?.Nominal).Millimetres("newDistance", advice?.Distance)
        .Texts("advice", advice?.Sentences ?? []);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
