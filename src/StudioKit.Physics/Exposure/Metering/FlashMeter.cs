using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure.Metering;

/// <summary>Flash metered by the camera: it sets the power at which the mean of what it sees comes out as a mid-tone, moved by the compensation that is dialled.</summary>
/// <remarks>Taken to see the light of one flash alone, evenly over the frame: daylight is measured before and taken off, groups are measured one after the other (common practice, no source).</remarks>
public static class FlashMeter
{
    /// <summary>Reflectance that a meter takes for granted: a surface of it reads the same by reflected as by incident light [1].</summary>
    [Source("Iso2720", "reflected- and incident-light equations set equal for a matt surface: π·K/C")]
    public static double MidTone { get; } = Math.PI * LightMeter.ReflectedConstant / LightMeter.IncidentConstant;

    /// <summary>Compensation at which the meter gives the light that is wanted.</summary>
    /// <param name="seen">What it sees by that light.</param>
    /// <returns>log₂ of the mean of reflectance and light over the field, against a correctly lit mid-tone.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share or reflectance is outside its range, or nothing that the meter sees throws light back.</exception>
    [Source("Iso2720", "reflected-light equation, over a field of two parts")]
    public static Stops Compensation(MeteredFlashCase seen)
    {
        ArgumentNullException.ThrowIfNull(seen);
        var share = Guard.Between(seen.SubjectShare, 0, 1, nameof(seen));
        var subject = Guard.Between(Guard.Positive(seen.SubjectReflectance, nameof(seen)), 0, 1, nameof(seen)) * seen.SubjectLevel.Ratio;
        var background = Guard.Between(seen.BackgroundReflectance, 0, 1, nameof(seen)) * seen.BackgroundLevel.Ratio;
        return new Stops(Math.Log2(Guard.Positive((share * subject) + ((1 - share) * background), nameof(seen)) / MidTone));
    }
}
