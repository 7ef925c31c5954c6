using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Standing;

/// <summary>What of a light counts for the exposure of a rounded animal that it does not meet head-on as the camera sees it.</summary>
/// <remarks>
/// An animal is round: whatever the angle γ between light and lens, one part of it faces midway between the two. That part is lit under γ/2 and
/// seen under γ/2, and the card exposes for it. What faces the light straight is brighter by −log₂ cos(γ/2), half a stop where the light comes
/// from the side, so it does not burn out; what faces the camera gets cos γ and keeps its drawing. A flat receptor that faced the light alone
/// would leave side and back light without any correction, one that faced the camera would ask for infinitely much from the side; practice opens
/// half a stop to one for light from the side and one and a half to two for light from behind, as this model does (−0.5 at 90°, −1.4 at 135°,
/// −2 at 151°).
/// </remarks>
public static class MidwayIncidence
{
    // Straight from behind, nothing that the camera sees is lit but by the light's own width; ten stops stand for that.
    private const double LeastCosine = 1.0 / 1024;

    /// <summary>Share of a light's normal luminous exposure that the part facing midway between light and camera gets.</summary>
    /// <param name="light">From where the light comes.</param>
    /// <param name="camera">From where the camera looks.</param>
    /// <returns>cos(γ/2) [1], γ the angle between the two; 1/1024 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    [Source("Lambert1760", "irradiance by the cosine of incidence, on a surface that faces midway between light and camera")]
    public static double Cosine(LightDirection light, LightDirection camera) => Math.Max(LeastCosine, Math.Cos(light.AngleTo(camera).Radians / 2));

    /// <summary>The same in stops, as a mean over the camera's angles that one exposure is for.</summary>
    /// <param name="light">From where the light comes.</param>
    /// <param name="pitches">Angles of the line of sight under the horizontal; at least one.</param>
    /// <returns>Mean of log₂ cos(γ/2) [stops]; −10 to 0.</returns>
    /// <exception cref="ArgumentException">There is no angle.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    [Source("Lambert1760", "irradiance by the cosine of incidence, on a surface that faces midway between light and camera")]
    public static Stops Loss(LightDirection light, IReadOnlyCollection<Angle> pitches)
    {
        ArgumentNullException.ThrowIfNull(pitches);
        return pitches.Count == 0
            ? throw new ArgumentException("A light is seen from one camera angle at least.", nameof(pitches))
            : new Stops(pitches.Average(pitch => Math.Log2(Cosine(light, LightDirection.OfCamera(pitch)))));
    }
}
