using StudioKit.Physics.Exposure.Metering;

namespace StudioKit.Physics.Exposure.Budgets;

/// <summary>The lines that camera and lens bring to a budget: from a surface's cd·s/m² to exposure against 78/S.</summary>
internal static class CameraTerms
{
    /// <summary>Sum of the lines without the camera's own clip point [stops].</summary>
    public static double AgainstSaturation(CameraCase camera)
    {
        ArgumentNullException.ThrowIfNull(camera);
        return LensFactor(camera) - camera.FilterLoss.Value - camera.CoverLoss.Value - (2 * Math.Log2(Guard.Positive(camera.Effective.Value, nameof(camera.Effective)))) + Speed(camera);
    }

    /// <summary>The lines one by one.</summary>
    public static IEnumerable<LightBudgetLine> Lines(CameraCase camera, LightUncertainty known)
    {
        yield return BudgetLine.Of(
            "Lens factor", LensFactor(camera), $"q = {camera.LensFactor:0.###}",
            "Iso12232", "image-plane exposure, q");
        if (camera.FilterLoss.Value != 0)
        {
            yield return BudgetLine.Of(
                "Filters", -camera.FilterLoss.Value, $"{camera.FilterLoss.Value:0.00} stops lost",
                "CommonPractice", "filter factors");
        }

        if (camera.CoverLoss.Value != 0)
        {
            yield return BudgetLine.Of(
                "Out of the cover", -camera.CoverLoss.Value, $"turned back by its walls, where they take most",
                "BornWolf1999", "Fresnel formulae, §1.5", known.OutOfCover);
        }

        yield return BudgetLine.Of(
            "Aperture", -2 * Math.Log2(camera.Aperture.Value), $"{camera.Aperture}",
            "Iso12232", "image-plane exposure, 1/N²", known.Aperture);
        yield return BudgetLine.Of(
            "Close focus", -2 * Math.Log2(camera.ApertureRatio), $"effective f-number {camera.Effective.Nominal}",
            "Iso12232", "image-plane exposure, image distance", known.CloseFocus);
        yield return BudgetLine.Of(
            "Sensor speed", Speed(camera), $"{camera.Iso}, clips at {SensorExposure.SaturationExposure(camera.Iso):0.###} lx·s",
            "Iso12232", "saturation, 78/S");
    }

    private static double LensFactor(CameraCase camera) =>
        Math.Log2(Guard.Between(Guard.Positive(camera.LensFactor, nameof(camera.LensFactor)), 0, 1, nameof(camera.LensFactor)));

    private static double Speed(CameraCase camera) => Math.Log2(camera.Iso.Value / SensorExposure.SaturationConstant);
}
