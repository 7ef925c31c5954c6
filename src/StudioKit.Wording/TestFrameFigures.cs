using System.Globalization;
using StudioKit.Field.Analysis;
using StudioKit.Field.Pictures;

namespace StudioKit.Wording;

/// <summary>What a test frame shows, figure by figure.</summary>
public static class TestFrameFigures
{
    // What is nearer to clipping than this rounds to nothing.
    private const double Visible = 0.05;

    /// <summary>The figures, each with its name.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="learning">How the camera's tone curve is learnt.</param>
    public static IReadOnlyList<(string Label, string Value)> Of(FrameAnalysis frame, string learning)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return [.. Figures(frame, learning)];
    }

    private static IEnumerable<(string Label, string Value)> Figures(FrameAnalysis frame, string learning)
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

        yield return ("tone curve", Curve(frame.Curve, learning));
    }

    private static string Curve(ToneCurve curve, string learning) => ReferenceEquals(curve, ToneCurve.Standard)
        ? $"the standard one is assumed; {learning}"
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
