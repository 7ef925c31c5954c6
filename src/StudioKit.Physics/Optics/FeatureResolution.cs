using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>Whether a repeated feature of a subject (hairs, veins, facets) can be told apart in a picture.</summary>
/// <remarks>
/// By Rayleigh's criterion two points part when one stands on the first dark ring of the other. A grating of that spacing keeps 8.9 % of its contrast through a perfect lens in focus;
/// a feature counts as resolved when as much is left of it after its own contrast, diffraction, defocus, pixels and smear. So with nothing but diffraction it is Rayleigh's criterion itself.
/// </remarks>
public static class FeatureResolution
{
    // Farther than anybody photographs a small thing; a field without an end behind ends here [m].
    private const double Farthest = 1000;

    /// <summary>Contrast that Rayleigh's criterion leaves of a full one [1].</summary>
    [Source("Rayleigh1879", "resolving power: two points 1.22·λ·N apart")]
    [Source("Goodman1968", "ch. 6: incoherent transfer function of a circular pupil, at 1/1.22 of the cut-off")]
    public static double RayleighContrast { get; } = Diffraction.ModulationTransfer(1 / 1.22, 1, 1);

    /// <summary>What is left of a feature in the picture.</summary>
    /// <param name="feature">The feature and how it is photographed.</param>
    /// <returns>Its contrast in focus, over what depth it is resolved, and what takes most of it.</returns>
    /// <remarks>Pixels are squares without gaps, smear is even and along the grating's normal, the worst case; each keeps |sin(πx)/(πx)|. Under two pixels a period nothing is counted.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside its range, or not finite.</exception>
    [Source("Hopkins1955", "transfer of a defocused circular pupil")]
    [Source("Boreman2001", "transfer of a detector's footprint and of linear motion")]
    [Source("Shannon1949", "sampling theorem: two samples a period")]
    public static FeatureResult Of(FeatureCase feature)
    {
        var left = Left.Of(feature);
        return new FeatureResult(left.Contrast, DepthOf(feature, left), left.Limit);
    }

    /// <summary>Contrast of a feature in the picture, in the focused plane.</summary>
    /// <param name="feature">The feature and how it is photographed.</param>
    /// <returns>Contrast [1]; resolved from <see cref="RayleighContrast"/> on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside its range, or not finite.</exception>
    [Source("Goodman1968", "ch. 6: incoherent transfer function of a circular pupil")]
    [Source("Boreman2001", "transfer of a detector's footprint and of linear motion")]
    public static double ContrastInFocus(FeatureCase feature) => Left.Of(feature).Contrast;

    /// <summary>Whether a feature is resolved over all of a depth, the lens focused where both ends are as blurred.</summary>
    /// <param name="feature">The feature and how it is photographed.</param>
    /// <param name="relief">Depth along the line of sight; ≥ 0 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument or a field is outside its range, or not finite.</exception>
    [Source("Hopkins1955", "transfer of a defocused circular pupil")]
    public static bool IsResolvedOver(FeatureCase feature, Length relief)
    {
        var left = Left.Of(feature);
        if (left.Contrast < RayleighContrast)
        {
            return false;
        }

        // Near and far end of a spot d lie r/(1 + r·v) and r/(1 − r·v) off, r = d·N/m²; their sum is the relief.
        var deep = Guard.NonNegative(relief.Meters, nameof(relief));
        var bent = deep * feature.PupilVergence;
        var reach = deep / (1 + Math.Sqrt(1 + (bent * bent)));
        var spot = reach * feature.Magnification.Value * feature.Magnification.Value / feature.EffectiveFNumber;
        return spot < DefocusedLens.SpotOfOneTurn(left.Frequency, feature.EffectiveFNumber, feature.Wavelength)
            && left.Kept * DefocusedLens.ModulationTransfer(left.Frequency, feature.EffectiveFNumber, spot, feature.Wavelength) >= RayleighContrast;
    }

    private static Length? DepthOf(FeatureCase feature, in Left left)
    {
        if (left.Contrast < RayleighContrast
            || DefocusedLens.LargestSpot(left.Frequency, feature.EffectiveFNumber, Math.Min(1, RayleighContrast / left.Kept), feature.Wavelength) is not { } spot)
        {
            return null;
        }

        // d = m²·δ/(N·(1 − δ/u)), solved for δ on either side of the focused plane.
        var m = feature.Magnification.Value;
        var reach = spot * feature.EffectiveFNumber / (m * m);
        var turn = reach * Guard.NonNegative(feature.PupilVergence, nameof(feature));
        return Length.FromMeters((reach / (1 + turn)) + (turn < 1 ? Math.Min(reach / (1 - turn), Farthest) : Farthest));
    }

    /// <summary>What of a feature is left in focus, cause by cause.</summary>
    private readonly record struct Left(double Frequency, double Own, double Pixels, double Smear, double Lens)
    {
        /// <summary>All but the lens.</summary>
        public double Kept => Own * Pixels * Smear;

        public double Contrast => Kept * Lens;

        public FeatureLimit Limit
        {
            get
            {
                var least = Math.Min(Math.Min(Pixels, Lens), Math.Min(Smear, Own));
                return Pixels == least ? FeatureLimit.Pixels
                    : Lens == least ? FeatureLimit.Diffraction
                    : Smear == least ? FeatureLimit.Smear
                    : FeatureLimit.Faintness;
            }
        }

        public static Left Of(FeatureCase feature)
        {
            ArgumentNullException.ThrowIfNull(feature);
            var period = Guard.Positive(feature.Spacing.Meters, nameof(feature));
            var onSensor = period * feature.Magnification.Value;
            return new Left(
                1 / onSensor,
                Guard.Between(Guard.Positive(feature.Contrast, nameof(feature)), 0, 1, nameof(feature)),
                OfPixels(Guard.Positive(feature.PixelPitch.Meters, nameof(feature)) / onSensor),
                OfSmear(Guard.NonNegative(feature.Smear.Meters, nameof(feature)) / period),
                Diffraction.ModulationTransfer(1 / onSensor, feature.EffectiveFNumber, feature.Wavelength));
        }

        private static double OfPixels(double pitches) => pitches > 0.5 ? 0 : Sinc(pitches);

        // Beyond a whole period bright and dark change places.
        private static double OfSmear(double periods) => periods >= 1 ? 0 : Sinc(periods);

        private static double Sinc(double x) => x == 0 ? 1 : Math.Sin(Math.PI * x) / (Math.PI * x);
    }
}
