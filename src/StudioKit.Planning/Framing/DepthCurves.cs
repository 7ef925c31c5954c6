using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>Depth of field against magnification, for the f-numbers that a plan uses.</summary>
internal static class DepthCurves
{
    private const int MostCurves = 5;
    private const int StepsPerDoubling = 4;

    /// <summary>A curve for each f-number in use, over the magnifications in use and half a doubling beyond.</summary>
    public static IReadOnlyList<DepthCurve> Of(KitSpec kit, IReadOnlyList<ExposurePlan> exposures)
    {
        if (exposures.Count == 0)
        {
            return [];
        }

        var magnifications = Magnifications(
            exposures.Min(exposure => exposure.Framing.Magnification.Value), exposures.Max(exposure => exposure.Framing.Magnification.Value));
        var circle = SharpnessPlanner.CircleOf(kit.Camera);
        return [.. exposures
            .Select(exposure => exposure.Aperture)
            .DistinctBy(aperture => aperture.Nominal)
            .OrderBy(aperture => aperture.Value)
            .Take(MostCurves)
            .Select(aperture => new DepthCurve(aperture, [.. magnifications.Select(m => At(m, aperture, circle))]))];
    }

    private static DepthPoint At(double m, FNumber aperture, Length circle) => new(
        new Magnification(m),
        Length.FromMeters(DepthOfField.CloseUpTotal(m, EffectiveAperture.EffectiveFNumber(aperture.Value, m), circle.Meters)));

    private static IReadOnlyList<double> Magnifications(double smallest, double largest)
    {
        var first = Math.Floor(Math.Log2(smallest) * StepsPerDoubling) - 2;
        var last = Math.Ceiling(Math.Log2(largest) * StepsPerDoubling) + 2;
        return [.. Enumerable.Range(0, (int)(last - first) + 1).Select(step => Math.Pow(2, (first + step) / StepsPerDoubling))];
    }
}
