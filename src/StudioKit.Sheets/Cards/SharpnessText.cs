using StudioKit.Physics.Optics;
using StudioKit.Planning;
using StudioKit.Planning.Framing;

namespace StudioKit.Sheets.Cards;

/// <summary>How sharp a framing is, in a line or two.</summary>
internal static class SharpnessText
{
    // Smear that coarsens the finest detail by less than this is not worth a reader's time.
    private const double WorthSaying = 1.05;

    public static string Of(SharpnessPlan sharpness)
    {
        var basis = $"Depth of field {PlanFormat.RoughMillimetres(sharpness.DepthOfField)}. {Detail(sharpness)}.";
        if (sharpness is not { ForSubject: { } subject, SharpestAperture: { } aperture })
        {
            return basis;
        }

        var stack = sharpness is { StackFrames: > 1 and { } frames, StackStep: { } step }
            ? FormattableString.Invariant($"; or {frames} frames, {PlanFormat.RoughMillimetres(step)} apart")
            : "";
        return $"{basis} {subject}: sharpest at {aperture.Nominal}{stack}.";
    }

    private static string Detail(SharpnessPlan sharpness)
    {
        var criterion = sharpness.StillDetail > sharpness.RayleighSeparation ? "two pixels" : "two points apart, Rayleigh";
        var still = $"Finest detail {PlanFormat.Micrometres(sharpness.StillDetail)} ({criterion})";
        return sharpness.FinestDetail > sharpness.StillDetail * WorthSaying ? $"{still}, {Smear(sharpness)}" : still;
    }

    private static string Smear(SharpnessPlan sharpness)
    {
        var limit = sharpness.SmearRules is null ? "" : $", {MeasureFormat.ThreeDigits(sharpness.SmearLimit)} pass for sharp";
        return $"{PlanFormat.Micrometres(sharpness.FinestDetail)} with smear: {MeasureFormat.ThreeDigits(sharpness.SmearPixels)} pixels, "
            + $"mostly by {Cause(sharpness.Smear.Largest.Kind)}{limit}";
    }

    private static string Cause(MotionBlurKind kind) => kind switch
    {
        MotionBlurKind.Hand => "the camera's sway in ambient light",
        MotionBlurKind.Subject => "the subject in ambient light",
        _ => "movement while the flash burns",
    };
}
