using StudioKit.Kits.Uprights;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Lights;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Words for sheets that stand behind a subject, and the flashes behind them.</summary>
public static class UprightText
{
    /// <summary>How a sheet stands in a set-up, in a sentence.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="light">The set-up's light on it.</param>
    /// <exception cref="ArgumentNullException">There is no plan or no light.</exception>
    public static string Stands(Plan plan, UprightLightPlan light)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(light);
        var upright = plan.Uprights.First(one => one.Name == light.Upright);
        var edge = upright.LowerEdge > Length.Zero ? $"its lower edge {DistanceFormat.Centimetres(upright.LowerEdge)} over the {Base(upright)}" : $"its lower edge on the {Base(upright)}";
        var lean = upright.Lean.Degrees > 0 ? $", leant {MeasureFormat.Degrees(upright.Lean)} away from the camera" : "";
        return $"The {upright.Name}, {PlanFormat.Rectangle(upright.Width, upright.Height)}, stands {DistanceFormat.Centimetres(light.FromSubject)} behind the subject, {edge}{lean}.";
    }

    /// <summary>The same for a card.</summary>
    /// <param name="light">The set-up's light on it.</param>
    /// <exception cref="ArgumentNullException">There is no light.</exception>
    public static string OfCard(UprightLightPlan light)
    {
        ArgumentNullException.ThrowIfNull(light);
        var (low, on) = (light.Sheet.Section.Panel[0].Up, light.OnPanel ? "panel" : "ground");
        return $"{Sentence.Begin(light.Upright)} {DistanceFormat.Centimetres(light.FromSubject)} behind the subject, its lower edge {(low > Length.Zero ? $"{DistanceFormat.Centimetres(low)} over" : "on")} the {on}.";
    }

    /// <summary>Where one of an exposure's flashes behind it stands, without the distance that a card prints in figures.</summary>
    /// <param name="upright">The set-up's light on the sheet.</param>
    /// <param name="exposure">The exposure.</param>
    /// <param name="light">The flash.</param>
    /// <exception cref="ArgumentNullException">Something is missing.</exception>
    public static string Place(UprightLightPlan upright, ExposurePlan exposure, LightPlan light)
    {
        ArgumentNullException.ThrowIfNull(upright);
        ArgumentNullException.ThrowIfNull(exposure);
        ArgumentNullException.ThrowIfNull(light);
        return Place(upright.Flashes[exposure.Lights.Count(other => other.Role == light.Role && other.Place < light.Place)]);
    }

    /// <summary>Where a flash behind a sheet stands, in a sentence.</summary>
    /// <param name="flash">The flash.</param>
    /// <exception cref="ArgumentNullException">There is no flash.</exception>
    public static string Flash(FlashBehindPlan flash)
    {
        ArgumentNullException.ThrowIfNull(flash);
        return $"{flash.Flash}{(flash.Modifier is null ? "" : $" with {flash.Modifier}")}: window {DistanceFormat.Centimetres(flash.Distance)} behind the sheet, {Place(flash)}.";
    }

    /// <summary>The same for a card, without the distance that it prints in figures.</summary>
    /// <param name="flash">The flash.</param>
    /// <exception cref="ArgumentNullException">There is no flash.</exception>
    public static string Place(FlashBehindPlan flash)
    {
        ArgumentNullException.ThrowIfNull(flash);
        var aside = flash.Right.Millimeters switch
        {
            > 0.5 => $", {DistanceFormat.Centimetres(flash.Right)} to the right",
            < -0.5 => $", {DistanceFormat.Centimetres(-flash.Right)} to the left",
            _ => "",
        };
        return $"its middle {DistanceFormat.Centimetres(flash.OverGround)} up{aside}, {Aim(flash)}";
    }

    private static string Aim(FlashBehindPlan flash) => Math.Abs(flash.Tilt.Degrees) < 0.5 && Math.Abs(flash.Turn.Degrees) < 0.5 ? "facing the subject" : "aimed at the subject";

    private static string Base(UprightPlan upright) => upright.Carrier == UprightCarrier.Frame ? "panel" : "ground";
}
