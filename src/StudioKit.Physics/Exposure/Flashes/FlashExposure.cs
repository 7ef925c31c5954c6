using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>Light of a flash from its guide number.</summary>
/// <remarks>
/// A guide number is f-number times distance for a correct exposure, so with the incident-light constant C it names a luminous
/// exposure of
/// C/100·(GN/d)² at full power. Guide numbers here are in metres at ISO 100.
/// </remarks>
public static class FlashExposure
{
    /// <summary>Light that a flash sends along its axis.</summary>
    /// <param name="guideNumber">Guide number at ISO 100 and full power; &gt; 0 m.</param>
    /// <param name="power">Power setting P.</param>
    /// <returns>Luminous intensity times time on the axis, C/100·GN²·P [cd·s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The guide number is not above zero.</exception>
    [Source("Iso1230", "guide number, through the incident-light constant of ISO 2720")]
    public static double IntensityTime(Length guideNumber, FlashPower power)
    {
        var gn = Guard.Positive(guideNumber.Meters, nameof(guideNumber));
        return LightMeter.IncidentConstant / 100 * gn * gn * power.Fraction;
    }

    /// <summary>Light that arrives at a distance on the flash's axis, by the inverse-square law.</summary>
    /// <param name="guideNumber">Guide number at ISO 100 and full power; &gt; 0 m.</param>
    /// <param name="power">Power setting P.</param>
    /// <param name="distance">Flash to surface d; &gt; 0 m.</param>
    /// <returns>Luminous exposure C/100·(GN/d)²·P [lx·s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The guide number or the distance is not above zero.</exception>
    [Source("Iso1230", "guide number, through the incident-light constant of ISO 2720")]
    public static double LuminousExposure(Length guideNumber, FlashPower power, Length distance)
    {
        var d = Guard.Positive(distance.Meters, nameof(distance));
        return IntensityTime(guideNumber, power) / (d * d);
    }

    /// <summary>Effective f-number for a correct exposure of the subject.</summary>
    /// <param name="guideNumber">Guide number at ISO 100 and full power; &gt; 0 m.</param>
    /// <param name="power">Power setting P.</param>
    /// <param name="distance">Flash to subject d; &gt; 0 m.</param>
    /// <param name="iso">Arithmetic speed S.</param>
    /// <param name="loss">Stops lost in modifiers and filters, counted positive.</param>
    /// <returns>N_e = GN·√(P·S/100)·2^(−loss/2)/d [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The guide number or the distance is not above zero.</exception>
    [Source("Iso1230", "guide number; √ISO and √power scaling")]
    public static FNumber EffectiveFNumber(
        Length guideNumber, FlashPower power, Length distance, IsoSpeed iso, Stops loss = default) =>
        new(ScaledGuideNumber(guideNumber, power, iso, -loss).Meters / Guard.Positive(distance.Meters, nameof(distance)));

    /// <summary>Guide number at another speed and power.</summary>
    /// <param name="guideNumber">Guide number at ISO 100 and full power; &gt; 0 m.</param>
    /// <param name="power">Power setting P.</param>
    /// <param name="iso">Arithmetic speed S.</param>
    /// <param name="correction">Further gain or loss, e.g. the outdoor correction, negative for a loss.</param>
    /// <returns>GN·√(P·S/100)·2^(correction/2) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The guide number is not above zero.</exception>
    [Source("Iso1230", "guide number; √ISO and √power scaling")]
    public static Length ScaledGuideNumber(Length guideNumber, FlashPower power, IsoSpeed iso, Stops correction = default) =>
        Length.FromMeters(Guard.Positive(guideNumber.Meters, nameof(guideNumber))
            * Math.Sqrt(power.Fraction * iso.Value / 100 * correction.Ratio));
}
