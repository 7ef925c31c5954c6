using StudioKit.Planning;
using StudioKit.Planning.Framing;

namespace StudioKit.Sheets.Cards;

/// <summary>How sharp a framing is, in a line or two.</summary>
internal static class SharpnessText
{
    public static string Of(SharpnessPlan sharpness)
    {
        var basis = $"Depth of field {PlanFormat.Millimetres(sharpness.DepthOfField)}, finest detail {PlanFormat.Micrometres(sharpness.FinestDetail)}.";
        if (sharpness is not { ForSubject: { } subject, SharpestAperture: { } aperture })
        {
            return basis;
        }

        var stack = sharpness is { StackFrames: > 1 and { } frames, StackStep: { } step }
            ? FormattableString.Invariant($"; or {frames} frames, {PlanFormat.Millimetres(step)} apart")
            : "";
        return $"{basis} {subject}: sharpest at {aperture.Nominal}{stack}.";
    }
}
