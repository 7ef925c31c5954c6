using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.Metering;

namespace StudioKit.Physics.Exposure.Budgets;

/// <summary>The lines that a flash brings to a budget: luminous exposure on its axis against 1 lx·s.</summary>
internal static class FlashTerms
{
    /// <summary>Sum of the lines at full power [stops against 1 lx·s].</summary>
    public static double AtFullPower(FlashCase flash)
    {
        ArgumentNullException.ThrowIfNull(flash);
        return Intensity(flash) + flash.OutdoorCorrection.Value - flash.ModifierLoss.Value - flash.CoverLoss.Value - flash.SubjectLoss.Value + Distance(flash) + NearFieldLoss(flash)
            + flash.DirectionLoss.Value - flash.LensLoss.Value;
    }

    /// <summary>The lines one by one, at the flash's own power.</summary>
    public static IEnumerable<LightBudgetLine> Lines(FlashCase flash, LightUncertainty known)
    {
        yield return BudgetLine.Of(
            "Guide number", Intensity(flash), $"{flash.GuideNumber.Meters:0.#} m at ISO 100{Zoom(flash)}, so {Math.Pow(2, Intensity(flash)):0} cd·s on the axis",
            "Iso1230", "guide number, through C = 250 of ISO 2720", Hypot(known.GuideNumber, flash.ZoomDoubt));
        yield return BudgetLine.Of(
            "Power", -flash.Power.StopsBelowFull, $"{flash.Mark}",
            "Derived", "share of full power");
        yield return BudgetLine.Of(
            "Outdoor correction", flash.OutdoorCorrection.Value, $"no walls to throw light back",
            "CommonPractice", "guide numbers are measured in a small light room", flash.OutdoorCorrection.Value == 0 ? default : known.Outdoor);
        if (flash.Modifier is not null || flash.ModifierLoss.Value != 0)
        {
            yield return BudgetLine.Of(
                "Modifier", -flash.ModifierLoss.Value, $"{flash.Modifier ?? "before the head"}",
                "Derived", "flux of two lobes", known.Modifier);
        }

        yield return BudgetLine.Of(
            "Distance", Distance(flash), $"{flash.Distance.Centimeters:0.#} cm, against 1 m",
            "CommonPractice", "inverse-square law", known.Distance);
        if (flash.HeadWidth.Meters > 0 || flash.HeadHeight.Meters > 0)
        {
            yield return BudgetLine.Of(
                "Head close by", NearFieldLoss(flash), $"{flash.HeadWidth.Millimeters:0} mm × {flash.HeadHeight.Millimeters:0} mm",
                "Howell", "rectangle to a parallel element");
        }

        if (flash.CoverLoss.Value != 0)
        {
            yield return BudgetLine.Of(
                "Into the cover", -flash.CoverLoss.Value, $"turned back on the way to the subject",
                "BornWolf1999", "Fresnel formulae, §1.5", known.IntoCover);
        }

        if (flash.SubjectLoss.Value != 0)
        {
            yield return BudgetLine.Of(
                "Out of the cover, subject", -flash.SubjectLoss.Value, $"against the sheet's light; water spreads the light of what is in it",
                "WaterRadiance", "radiance over n² stays the same through a face");
        }

        if (flash.DirectionLoss.Value != 0)
        {
            yield return BudgetLine.Of(
                "Direction", flash.DirectionLoss.Value, $"cosine on what faces midway between light and lens",
                "Lambert1760", "irradiance by the cosine of incidence");
        }

        if (flash.LensLoss.Value != 0)
        {
            yield return BudgetLine.Of(
                "Behind the lens", -flash.LensLoss.Value, $"what lens and hood hide of its face from the subject",
                "Derived", "straight rays from a lattice of points of the window");
        }
    }

    private static string Zoom(FlashCase flash) => (flash.Zoom, flash.MadeFrom) switch
    {
        ({ } zoom, { Zoom: { } listed } from) => FormattableString.Invariant($" and {zoom.Millimeters:0.#} mm, made from {from.AtIso100.Meters:0.#} m at {listed.Millimeters:0.#} mm"),
        ({ } zoom, { }) => FormattableString.Invariant($", quoted for no zoom and used at {zoom.Millimeters:0.#} mm"),
        ({ } zoom, null) => FormattableString.Invariant($" and {zoom.Millimeters:0.#} mm"),
        _ => "",
    };

    private static Stops Hypot(Stops one, Stops other) => new(double.Hypot(one.Value, other.Value));

    private static double Intensity(FlashCase flash) =>
        Math.Log2(LightMeter.IncidentConstant / 100) + (2 * Math.Log2(Guard.Positive(flash.GuideNumber.Meters, nameof(flash.GuideNumber))));

    private static double Distance(FlashCase flash) =>
        -2 * Math.Log2(Guard.Positive(flash.Distance.Meters, nameof(flash.Distance)));

    private static double NearFieldLoss(FlashCase flash)
    {
        var twice = 2 * flash.Distance.Meters;
        return Math.Log2(NearField.RectangleFactor(
            Guard.NonNegative(flash.HeadWidth.Meters, nameof(flash.HeadWidth)) / twice,
            Guard.NonNegative(flash.HeadHeight.Meters, nameof(flash.HeadHeight)) / twice));
    }
}
