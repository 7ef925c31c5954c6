using System.Globalization;
using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.Field.Pictures;
using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Tables;

/// <summary>What test frames say, as text and as JSON: the verdict and what to turn first.</summary>
internal static class PhotoReport
{
    // What is nearer to clipping than this rounds to nothing.
    private const double Visible = 0.05;

    public static string Lines(FrameReport report)
    {
        var frame = report.Frame;
        string[] first = [frame.Path, FrameWords.Verdict(report), .. FrameWords.Turns(report)];

        // Figures that mean nothing are not printed.
        return report.Finding.Verdict == FrameVerdict.Doubtful
            ? string.Join(Environment.NewLine, [.. first, .. frame.Caveats])
            : string.Join(Environment.NewLine, [.. first, "", TextLines.Of([.. Figures(frame)], frame.Caveats)]);
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
        Write(json, report.Advice, report.Planned, [.. FrameWords.Turns(report)]);
        json.Number("nextFrameStopsLower", report.Finding.Next?.StopsLower).Text("nextFramePowerMark", report.Finding.Next?.Mark?.Nominal)
            .Texts("caveats", frame.Caveats);
    }

    /// <summary>What to turn: by a plan where there is one.</summary>
    public static void Write(JsonReport json, WhiteAdvice? advice, FrameAdvice? planned, IReadOnlyList<string> sentences)
    {
        var dial = planned?.ByDial?.Promise;
        var mark = planned is null ? advice?.Mark : dial?.Lights.FirstOrDefault(IsBelow)?.Mark;
        var moved = planned?.Pieces.FirstOrDefault(piece => piece.Changes.Any(change => change is KitChange.Move))?.Promise.Lights.FirstOrDefault(IsBelow)?.Distance;
        var change = planned is null ? advice?.ChangeStops : (dial?.WhiteMargin - planned.Shot.WhiteMargin)?.Value;
        json.Number("changeStops", change).Number("newPower", mark?.Power.Fraction).Text("newPowerMark", mark?.Nominal).Number("newIso", dial?.Iso.Value)
            .Millimetres("newDistance", planned is null ? advice?.Distance : moved)
            .Stops("promisedDarkest", dial?.WhiteMargin).Stops("promisedBrightest", dial?.BrightestMargin).Stops("veilAllows", dial?.HighestMargin)
            .Texts("advice", sentences);
    }

    private static bool IsBelow(LightPlan light) => light.Role == Kits.SetUps.LightRole.Below;

    private static IEnumerable<(string Label, string Value)> Figures(FrameAnalysis frame)
    {
        yield return ("background", Text($"{Rounded.Percent(frame.BackgroundShare)} of the frame, {Rounded.Percent(frame.ClippedShare)} of it white{(frame.DoubtfulShare > 0 ? Text($"; {Rounded.Percent(frame.DoubtfulShare)} of the frame could be either") : "")}"));
        yield return ("missing", Missing(frame));
        yield return ("unevenness", Text($"{Rounded.Stops(frame.UnevennessStops, 1)}{(frame.UnevennessIsLeast ? " or more" : "")}"));
        foreach (var region in frame.Regions.Where(region => region.StopsMissing >= Visible))
        {
            yield return ("  " + region.Name, Text($"{Rounded.Percent(region.ClippedShare)} white, {Rounded.Stops(region.StopsMissing, 1)} under"));
        }

        if (frame.Tint is { } tint)
        {
            yield return ("tint", $"red {Rounded.SignedStops(tint.RedStops, 2)}, blue {Rounded.SignedStops(tint.BlueStops, 2)} against green");
        }

        if (frame is { Veil: { } veil, Tones: { } tones })
        {
            yield return ("darkest of subject", Text($"{Rounded.Percent(veil.ShareOfSaturation)} of white, {Rounded.Stops(veil.StopsUnderClipping, 1)} under; the veil is at most that"));
            yield return ("middle of subject", Text($"{Rounded.Stops(tones.MiddleStops, 1)} under white, where a mid-tone lies 3.0{(tones.ClippedShare > 0.0005 ? $"; {Rounded.Percent(tones.ClippedShare)} of it is white itself" : "")}"));
        }

        yield return ("tone curve", Curve(frame.Curve));
    }

    private static string Curve(ToneCurve curve) => ReferenceEquals(curve, ToneCurve.Standard)
        ? "the standard one is assumed; a ladder with --learn-curve learns the camera's"
        : curve.IsStandard ? "the standard one, as a ladder of this camera found" : Text($"the camera's own, kept (± {curve.PlusMinus:0.00} stop)");

    private static string Missing(FrameAnalysis frame) => (frame.StopsMissing, frame.ClippedShare) switch
    {
        (0, >= 0.9995) => "nothing: all of it is white",
        (0, _) => Text($"less than can be seen: {Rounded.Percent(1 - frame.ClippedShare)} of it lies just under clipping"),
        ( < Visible, _) => Text($"under 0.05 stop at the darkest"),
        _ => $"{Rounded.Stops(frame.StopsMissing, 1)} at the darkest",
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
