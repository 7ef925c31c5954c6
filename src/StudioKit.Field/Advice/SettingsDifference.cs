using StudioKit.Field.Pictures;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;

namespace StudioKit.Field.Advice;

/// <summary>Where a frame was not taken as its card says, so that nobody looks for the fault in the light.</summary>
public static class SettingsDifference
{
    private const double SameStops = 0.1;

    /// <summary>One sentence for each setting that differs.</summary>
    /// <param name="settings">What the file says.</param>
    /// <param name="planned">What the plan says.</param>
    public static IEnumerable<string> Of(FrameSettings settings, ExposurePlan planned)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(planned);
        if (settings.Aperture is { } aperture && Differ(2 * Math.Log2(aperture.Value / planned.Aperture.Value))
            && Differ(2 * Math.Log2(aperture.Value / planned.EffectiveAperture.Value)))
        {
            yield return $"The frame was taken at {aperture.Nominal}; the plan says {planned.Aperture.Nominal}.";
        }

        if (settings.Iso is { } iso && Differ(Math.Log2(iso.Value / planned.Iso.Value)))
        {
            yield return $"The frame was taken at {iso.Nominal}; the plan says {planned.Iso.Nominal}.";
        }
    }

    /// <summary>f-number that was set: a file may name the effective one, which counts as the planned one set.</summary>
    /// <param name="settings">What the file says.</param>
    /// <param name="planned">What the plan says.</param>
    /// <returns>The f-number; none where the file does not say, or says the planned one.</returns>
    public static FNumber? ApertureOf(FrameSettings settings, ExposurePlan planned)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(planned);
        return settings.Aperture is { } aperture && Differ(2 * Math.Log2(aperture.Value / planned.Aperture.Value)) && Differ(2 * Math.Log2(aperture.Value / planned.EffectiveAperture.Value))
            ? settings.MarkedAperture ?? aperture
            : null;
    }

    private static bool Differ(double stops) => Math.Abs(stops) > SameStops;
}
