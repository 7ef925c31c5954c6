using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>The white margin of a flash under a panel, worked out without a kit.</summary>
public static class WhiteMarginReport
{
    /// <summary>Draws up the account.</summary>
    /// <param name="guideNumber">Guide number at full power.</param>
    /// <param name="power">Power of the flash.</param>
    /// <param name="distance">Flash to panel; above zero.</param>
    /// <param name="transmittance">Share of the light that the panel lets through [1]; above 0, at most 1.</param>
    /// <param name="aperture">f-number set on the lens.</param>
    /// <param name="magnification">Magnification.</param>
    /// <param name="pupilRatio">Exit over entrance pupil diameter [1]; above zero.</param>
    /// <param name="iso">ISO speed.</param>
    /// <param name="outdoorCorrection">What the guide number loses outdoors, negative stops.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static LightBudget Of(
        GuideNumber guideNumber, FlashPower power, Length distance, double transmittance, FNumber aperture, Magnification magnification,
        double pupilRatio, IsoSpeed iso, Stops outdoorCorrection) => WhiteMargin.Budget(new WhiteMarginCase
        {
            Flash = new FlashCase
            {
                Name = "flash below",
                GuideNumber = guideNumber.AtIso100,
                Power = power,
                Distance = distance,
                OutdoorCorrection = outdoorCorrection,
            },
            Camera = new CameraCase
            {
                Aperture = aperture,
                EffectiveFNumber = new FNumber(EffectiveAperture.EffectiveFNumber(aperture.Value, magnification.Value, pupilRatio)),
                Iso = iso,
            },
            Transmittance = transmittance,
        });
}
