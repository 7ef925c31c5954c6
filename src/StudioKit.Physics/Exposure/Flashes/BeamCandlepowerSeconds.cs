using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>Guide number from a flash rated in beam candlepower seconds (BCPS), the intensity times time on its axis.</summary>
public static class BeamCandlepowerSeconds
{
    // In feet: GN² = 0.063·BCPS·S. The foot brings it to metres.
    private const double TraditionalFactorFeet = 0.063;
    private const double FootInMetres = 0.3048;

    /// <summary>Guide number that agrees with the incident-light constant C = 250.</summary>
    /// <param name="bcps">Beam candlepower seconds [cd·s]; &gt; 0.</param>
    /// <param name="iso">Arithmetic speed S.</param>
    /// <returns>√(BCPS·S/C) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rating is not above zero.</exception>
    [Source("Iso2720", "incident-light equation with E·t = BCPS/d²")]
    public static Length GuideNumber(double bcps, IsoSpeed iso) =>
        Length.FromMeters(Math.Sqrt(Guard.Positive(bcps) * iso.Value / LightMeter.IncidentConstant));

    /// <summary>Guide number by the makers' traditional constant, about half a stop more hopeful.</summary>
    /// <param name="bcps">Beam candlepower seconds [cd·s]; &gt; 0.</param>
    /// <param name="iso">Arithmetic speed S.</param>
    /// <returns>√(0.063·BCPS·S) in feet, brought to metres [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rating is not above zero.</exception>
    [Source("CommonPractice", "traditional constant 0.063 for feet, from memory")]
    public static Length TraditionalGuideNumber(double bcps, IsoSpeed iso) =>
        Length.FromMeters(FootInMetres * Math.Sqrt(TraditionalFactorFeet * Guard.Positive(bcps) * iso.Value));
}
