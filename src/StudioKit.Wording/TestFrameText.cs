using System.Globalization;
using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Advising;

namespace StudioKit.Wording;

/// <summary>What a test frame comes to and what to turn, in words.</summary>
public static class TestFrameText
{
    /// <summary>The verdict, as a sentence.</summary>
    /// <param name="report">The frame.</param>
    public static string Verdict(FrameReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return report.Finding.Verdict switch
        {
            FrameVerdict.Doubtful => $"DOUBTFUL: {report.Frame.Doubt}",
            FrameVerdict.NotWhite => Text($"NOT WHITE: {Under(report.Frame.StopsMissing)} under clipping at the darkest, {Darkest(report.Frame).Name}."),
            FrameVerdict.Right => "RIGHT: white all over, and the veil on the subject is within its limit.",
            FrameVerdict.TooBright => $"TOO BRIGHT: white all over, {Lifted(report)}.",
            _ => $"WHITE all over, {Open(report)}.",
        };
    }

    /// <summary>What to turn, best first.</summary>
    /// <param name="report">The frame.</param>
    /// <param name="asked">How to say how the lower flash was set, where that would tell what to turn.</param>
    public static IReadOnlyList<string> Turns(FrameReport report, string asked)
    {
        ArgumentNullException.ThrowIfNull(report);
        return
        [
            .. report.Planned is { } planned ? Turns(planned) : IsOpen(report.Finding) ? [] : report.Advice?.Sentences ?? Asked(report, asked),
            .. report.Finding.Next is { } next ? new[] { Next(next) } : [],
            .. report.Differences,
        ];
    }

    // How far it is from white the frame tells; what to turn depends on how the flash stood.
    private static string[] Asked(FrameReport report, string asked) => report is { Frame.Doubt: null, Finding.Verdict: FrameVerdict.NotWhite }
        ? [$"To be told what to turn, say how the lower flash was set: {asked}."]
        : [];

    /// <summary>What a plan makes of a frame, best first.</summary>
    /// <param name="planned">What it makes of it.</param>
    public static IReadOnlyList<string> Turns(FrameAdvice planned)
    {
        ArgumentNullException.ThrowIfNull(planned);
        return [.. Sentences(planned)];
    }

    private static IEnumerable<string> Sentences(FrameAdvice planned)
    {
        if (planned.IsSetOtherwise)
        {
            yield return Text($"It lies {Rounded.WithSign(planned.Gives!.Value.Value, 1)} stops from what the plan expects for what was set: check power, distance, f-number and ISO speed. No advice from it.");
            yield break;
        }

        if (planned.Gives is not { } gives)
        {
            yield return Text($"For what was set the plan expects {Rounded.WithSign(planned.Expected.Value, 1)} stops at the darkest place{(planned.Expected.Value < 0 ? ", so there is at least that much more light than planned" : "")}.");
            yield break;
        }

        if (planned.Pieces.Count == 0)
        {
            yield return $"Nothing that the kit has makes this white all over within the veil limit: {(planned.LessEven.Value > 0 ? "more light would veil where it is brightest. See that the flash below stands under the middle of the view, with distance, zoom and dome as planned" : "see what the plan says of the set-up")}.";
        }

        foreach (var (piece, i) in planned.Pieces.Select((piece, i) => (piece, i)))
        {
            yield return (i == 0 ? "" : "Or: ") + Piece(planned.Shot, piece);
        }

        yield return Text($"(The light is {Rounded.SignedStops(gives.Value, 1)} against the plan at the darkest place{LessEven(planned.LessEven)}.)");
    }

    private static string LessEven(Stops stops) => stops.Value > 0 ? Text($", and the brightest lies {Rounded.Stops(stops.Value, 1)} or more further over it than planned") : "";

    // White that does not show how far it is over tells nothing to turn yet.
    private static bool IsOpen(FrameFinding finding) => finding.Verdict is FrameVerdict.WhiteUnbounded or FrameVerdict.TooBright;

    private static string Piece(ExposurePlan shot, Advice piece)
    {
        var turn = AdviceText.Of(shot, piece);
        return Text($"{Begun(turn)}: darkest {Stops(piece.Promise.WhiteMargin)}, brightest {Stops(piece.Promise.BrightestMargin)} stops over clipping, where the veil allows {Stops(piece.Promise.HighestMargin)}.");
    }

    // An f-number keeps its small letter.
    private static string Begun(string turn) => turn switch
    {
        "" => "Leave all as it is",
        ['f', '/', ..] => $"Set {turn}",
        _ => Sentence.Begin(turn),
    };

    private static string Next(LowerFrame next) => next.Mark is { } mark
        ? Text($"To know, take one {next.StopsLower:0} stops lower, at {mark.Nominal}: it shows margins of this frame from 0 to {next.ReadsTo:0.0} stops.")
        : Text($"To know, take one {next.StopsLower:0} stops darker, by power, ISO speed or f-number: it shows margins of this frame from 0 to {next.ReadsTo:0.0} stops.");

    private static string Lifted(FrameReport report) => report.Frame.Tones is { ClippedShare: > 0.02 } tones
        ? $"and {Rounded.Percent(tones.ClippedShare)} of the subject with it"
        : $"and by the plan brighter than the veil allows{Bound(report.Finding)}";

    private static string Open(FrameReport report) => report.Frame.Veil is { } veil
        ? Text($"and perhaps too bright: the subject's darkest part lies only {veil.StopsUnderClipping:0.0} stops under white, where the veil limit leaves black {report.Finding.VeilAllowedStops:0.0} under. Either nothing on it is dark, or the veil lifts it{Bound(report.Finding)}")
        : $"but how far over clipping cannot be seen in white{Bound(report.Finding)}";

    private static string Bound(FrameFinding finding) => finding.MostMargin is { } most
        ? Text($" (the background lies at least 0, at most {most:0.0} stops over clipping)")
        : " (at least 0 stops)";

    /// <summary>The region that is furthest under clipping.</summary>
    private static FrameRegion Darkest(FrameAnalysis frame) => frame.Regions.MaxBy(region => region.StopsMissing)!;

    private static string Under(double stops) => stops < 0.05 ? "under 0.05 stop" : Rounded.Stops(stops, 1);

    private static string Stops(Stops? stops) => stops is { } value ? Rounded.WithSign(value.Value, 1) : "?";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
