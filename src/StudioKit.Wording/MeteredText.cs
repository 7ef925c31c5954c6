using StudioKit.Physics.Exposure.Metering;
using StudioKit.Planning;

namespace StudioKit.Wording;

/// <summary>What to dial where the camera meters a flash, in words.</summary>
internal static class MeteredText
{
    /// <summary>What the meter is taken to see.</summary>
    public static string Basis { get; } =
        $"The meter is taken to see its flash's light alone, in the middle quarter of the frame, and to make the mean of it {MeasureFormat.Percent(Math.Round(FlashMeter.MidTone, 2))} grey. "
        + "Cameras differ: try it on a test object against the power set by hand.";

    /// <summary>Behind the flash's name on a card; empty where it is not metered, or cannot be dialled.</summary>
    public static string Behind(LightPlan light) => light.Metered is { CanBeDialled: true } metered ? $"; metered {metered.Compensation.Nominal}" : "";

    /// <summary>What to dial.</summary>
    public static string Dial(MeteredFlashPlan metered) => metered.CanBeDialled ? metered.Compensation.Nominal : $"{metered.Compensation.Nominal}: beyond the dial, set the power by hand";
}
