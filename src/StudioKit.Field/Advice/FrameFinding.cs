using StudioKit.Field.Analysis;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Advice;

/// <summary>What a test frame comes to, what it leaves open, and which frame would tell.</summary>
/// <remarks>
/// A clipped background hides how far it lies over clipping. What bounds it is the veil: the subject's darkest part holds at least the veil, so
/// the veil is no more than that, and with the veiling glare index the background no further over clipping than makes such a veil.
/// </remarks>
public sealed record FrameFinding
{
    // Under this nobody sees that a subject's own highlights are gone.
    private const double BlownShare = 0.02;

    // A frame can be read from a quarter of a stop under clipping to some three and a half.
    private const double ReadsFrom = 0.25;
    private const double ReadsDownTo = 3.5;

    // So far over clipping is looked for where nothing bounds it.
    private const double UsualMost = 2.75;

    /// <summary>What it comes to.</summary>
    public required FrameVerdict Verdict { get; init; }

    /// <summary>Least stops by which the darkest background lies over clipping [1]; negative where it is under.</summary>
    public required double LeastMargin { get; init; }

    /// <summary>Most stops by which the background can lie over clipping on average, as the veil on the subject's darkest part bounds it [1]; none where nothing bounds it.</summary>
    public double? MostMargin { get; init; }

    /// <summary>Light on the subject's darkest part that the veil limit allows to be veil, in stops under clipping [1].</summary>
    public required double VeilAllowedStops { get; init; }

    /// <summary>The frame that would tell more; none where there is nothing left to tell.</summary>
    public LowerFrame? Next { get; init; }

    /// <summary>Judges a frame.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="limits">What it is held against.</param>
    [Source("Iso9358", "veiling glare index; the veil is no more than the darkest tone")]
    public static FrameFinding Of(FrameAnalysis frame, FrameLimits limits)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(limits);
        var midTone = Math.Pow(2, -SensorExposure.MidToneUnderClipping);
        var allowed = (Math.Pow(2, limits.VeilLimit.Value) - 1) * midTone;
        var verdict = VerdictOf(frame, limits, allowed);
        var most = verdict == FrameVerdict.Doubtful ? null : MostOver(frame, limits.GlareIndex);
        return new FrameFinding
        {
            Verdict = verdict,
            LeastMargin = -frame.StopsMissing,
            MostMargin = most,
            VeilAllowedStops = -Math.Log2(allowed),
            Next = verdict is FrameVerdict.WhiteUnbounded or FrameVerdict.TooBright ? Lower(Foreseen(limits, most), limits.Flash) : null,
        };
    }

    private static FrameVerdict VerdictOf(FrameAnalysis frame, FrameLimits limits, double allowed) =>
        frame.Doubt is not null ? FrameVerdict.Doubtful
        : frame.StopsMissing > 0 ? FrameVerdict.NotWhite
        : frame.Tones is { ClippedShare: > BlownShare } ? FrameVerdict.TooBright
        : frame.Veil is { } veil && veil.ShareOfSaturation <= allowed ? FrameVerdict.Right
        : IsPlannedTooBright(limits) ? FrameVerdict.TooBright
        : FrameVerdict.WhiteUnbounded;

    private static bool IsPlannedTooBright(FrameLimits limits) =>
        limits.Planned?.Shot is { BrightestMargin: { } brightest, HighestMargin: { } highest, Uncertainty: var sigma } && brightest.Value - sigma.Value > highest.Value;

    private static double? MostOver(FrameAnalysis frame, double glareIndex) => frame.Veil is { } veil && glareIndex > 0 && frame.BackgroundShare > 0
        ? Math.Max(0, Math.Log2(veil.ShareOfSaturation / (glareIndex * frame.BackgroundShare)))
        : null;

    // A frame that is brighter than planned is looked for as far as the veil allows.
    private static double Foreseen(FrameLimits limits, double? most) => (Expected(limits), most) switch
    {
        ({ } planned, { } bound) when IsWithin(limits, bound) => Math.Min(planned, bound),
        ({ } planned, null) => planned,
        (_, { } bound) => bound,
        _ => UsualMost,
    };

    // Whether the frame's own bound leaves the plan's word standing.
    private static bool IsWithin(FrameLimits limits, double bound) => limits.Planned?.Shot.HighestMargin is { } highest && bound <= highest.Value;

    // The brightest place by the plan, and what the plan does not know.
    private static double? Expected(FrameLimits limits) => limits.Planned?.Shot is { BrightestMargin: { } brightest, Uncertainty: var sigma } && brightest.Value > 0
        ? brightest.Value + sigma.Value
        : null;

    private static LowerFrame Lower(double most, BeneathFlash? flash)
    {
        var stops = Math.Clamp(Math.Ceiling(most + ReadsFrom), 1, Math.Floor(ReadsDownTo));
        var below = flash is null ? double.NaN : flash.Power.StopsBelowFull + stops;
        DialMark? mark = flash is not null && below <= flash.LowestPower.StopsBelowFull + 1e-9 ? new DialMark(FlashPower.FromStopsBelowFull(Guard.NonNegative(below)), flash.PowerStep) : null;
        return new LowerFrame(stops, mark, stops - ReadsFrom);
    }
}
