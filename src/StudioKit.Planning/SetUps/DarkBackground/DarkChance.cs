using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.SetUps.DarkBackground;

/// <summary>How likely a black background stays black.</summary>
internal static class DarkChance
{
    // Three stops under a mid-tone the first texture shows; four and five stops under it all is black (the zones of exposure, from memory).
    private const double FirstTexture = 3;

    /// <summary>Probability that daylight and flash together leave no texture on the background, or as little as the set-up asks where it asks for less.</summary>
    /// <param name="result">The exposure found.</param>
    /// <param name="under">Stops under the subject's light that were asked.</param>
    /// <param name="ambient">One standard deviation of the ambient light.</param>
    /// <param name="flash">One standard deviation of the flash.</param>
    /// <returns>Probability [1]; 0 to 1.</returns>
    public static double BackgroundHidden(SetUpResult result, Stops under, Stops ambient, Stops flash)
    {
        var level = result.BackgroundLevel!.Value;
        var daylight = Math.Min(1, (result.AmbientLevel - level).Ratio);
        var unsure = new Stops(double.Hypot(daylight * ambient.Value, (1 - daylight) * flash.Value));
        return Likelihood.Above(new Stops(-Math.Min(FirstTexture, under.Value)), level, unsure);
    }
}
