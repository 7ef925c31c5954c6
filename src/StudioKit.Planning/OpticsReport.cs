using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Close-up arithmetic of one unit-focusing lens at one extension.</summary>
/// <param name="Stack">Distances, magnification, effective f-number and field.</param>
/// <param name="DepthOfField">Depth of field by the close-up formula 2·c·N_e/m².</param>
/// <param name="CircleOfConfusion">The blur that passes for sharp.</param>
/// <param name="AiryDisc">Diameter of the Airy disc at the sensor.</param>
/// <param name="RayleighSeparation">Least distance between two points that part, by Rayleigh's criterion, at the sensor.</param>
public sealed record OpticsReport(OpticalStackResult Stack, Length DepthOfField, Length CircleOfConfusion, Length AiryDisc, Length RayleighSeparation)
{
    /// <summary>The same separation at the subject.</summary>
    public Length RayleighSeparationAtSubject => RayleighSeparation / Stack.Magnification.Value;

    /// <summary>Works it out.</summary>
    /// <param name="focalLength">Focal length; above zero.</param>
    /// <param name="extension">Extension beyond infinity focus; above zero.</param>
    /// <param name="aperture">f-number set on the lens.</param>
    /// <param name="sensorWidth">Longer side of the sensor; above zero.</param>
    /// <param name="sensorHeight">Shorter side of the sensor; above zero.</param>
    /// <param name="pupilRatio">Exit over entrance pupil diameter [1]; above zero, none where it is unknown.</param>
    /// <param name="circleOfConfusion">Blur that passes for sharp; the diagonal / 1500 where none is given.</param>
    /// <param name="wavelength">Wavelength of the light; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static OpticsReport Of(
        Length focalLength, Length extension, FNumber aperture, Length sensorWidth, Length sensorHeight, double? pupilRatio,
        Length? circleOfConfusion, Length wavelength)
    {
        var stack = OpticalStack.FromExtension(focalLength, extension, aperture, sensorWidth, sensorHeight, pupilRatio);
        var blur = circleOfConfusion?.Meters
            ?? Physics.Optics.CircleOfConfusion.FromDiagonal(sensorWidth.Meters, sensorHeight.Meters);
        var effective = stack.EffectiveFNumber.Value;
        return new OpticsReport(
            stack,
            Length.FromMeters(Physics.Optics.DepthOfField.CloseUpTotal(stack.Magnification.Value, effective, blur)),
            Length.FromMeters(blur),
            Length.FromMeters(Diffraction.AiryDiscDiameter(effective, wavelength.Meters)),
            Length.FromMeters(Diffraction.RayleighSeparation(effective, wavelength.Meters)));
    }
}
