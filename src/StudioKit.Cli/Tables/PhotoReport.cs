using StudioKit.Field.Advice;
using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;
using StudioKit.Sheets.Json;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>What test frames say, as text and as JSON: the verdict and what to turn first.</summary>
internal static class PhotoReport
{
    private const string HowToSay = "--power, and --distance or --kit";

    public static string Lines(FrameReport report)
    {
        var frame = report.Frame;
        string[] first = [frame.Path, TestFrameText.Verdict(report), .. TestFrameText.Turns(report, HowToSay)];

        // Figures that mean nothing are not printed.
        return report.Finding.Verdict == FrameVerdict.Doubtful
            ? string.Join(Environment.NewLine, [.. first, .. frame.Caveats])
            : string.Join(Environment.NewLine, [.. first, "", TextLines.Of(TestFrameFigures.Of(frame, "a ladder with --learn-curve learns the camera's"), frame.Caveats)]);
    }

    public static void Write(JsonReport json, FrameReport report)
    {
        var frame = report.Frame;
        json.Text("file", frame.Path).Text("verdict", MemberText.Of(report.Finding.Verdict))
            .Count("widthPixels", frame.Width).Count("heightPixels", frame.Height)
            .Number("backgroundShare", frame.BackgroundShare).Number("doubtfulShare", frame.DoubtfulShare).Number("clippedShare", frame.ClippedShare)
            .Number("missingStops", frame.StopsMissing).Text("doubt", frame.Doubt)
            .Number("leastMarginStops", report.Finding.LeastMargin).Number("mostMarginStops", report.Finding.MostMargin)
            .Number("unevennessStops", frame.UnevennessStops).Flag("unevennessIsLeast", frame.UnevennessIsLeast)
            .Number("tintRedStops", frame.Tint?.RedStops).Number("tintBlueStops", frame.Tint?.BlueStops)
            .Number("veilAtMostShare", frame.Veil?.ShareOfSaturation)
            .Number("subjectMiddleStops", frame.Tones?.MiddleStops).Number("subjectClippedShare", frame.Tones?.ClippedShare)
            .Flag("standardToneCurve", frame.Curve.IsStandard)
            .List("regions", frame.Regions, region => json
                .Text("name", region.Name).Number("clippedShare", region.ClippedShare).Number("missingStops", region.StopsMissing))
            .Section("sharpness", () => json
                .Count("columns", frame.Sharpness.Columns).Count("rows", frame.Sharpness.Rows).Numbers("relative", frame.Sharpness.Relative));
        Write(json, report.Advice, report.Planned, TestFrameText.Turns(report, HowToSay));
        json.Number("nextFrameStopsLower", report.Finding.Next?.StopsLower).Text("nextFramePowerMark", report.Finding.Next?.Mark?.Nominal)
            .Texts("caveats", frame.Caveats);
    }

    /// <summary>What to turn: by a plan where there is one.</summary>
    public static void Write(JsonReport json, WhiteAdvice? advice, FrameAdvice? planned, IReadOnlyList<string> sentences)
    {
        var dial = planned?.ByDial?.Promise;
        var mark = planned is null ? advice?.Mark : dial?.Lights.FirstOrDefault(IsOfSheet)?.Mark;
        var moved = planned?.Pieces.FirstOrDefault(piece => piece.Changes.Any(change => change is KitChange.Move))?.Promise.Lights.FirstOrDefault(IsOfSheet)?.Distance;
        var change = planned is null ? advice?.ChangeStops : (dial?.WhiteMargin - planned.Shot.WhiteMargin)?.Value;
        json.Number("changeStops", change).Number("newPower", mark?.Power.Fraction).Text("newPowerMark", mark?.Nominal).Number("newIso", dial?.Iso.Value)
            .Millimetres("newDistance", planned is null ? advice?.Distance : moved)
            .Stops("promisedDarkest", dial?.WhiteMargin).Stops("promisedBrightest", dial?.BrightestMargin).Stops("veilAllows", dial?.HighestMargin)
            .Texts("advice", sentences);
    }

    private static bool IsOfSheet(PromisedLight light) => light.Role.IsBackground();
}
