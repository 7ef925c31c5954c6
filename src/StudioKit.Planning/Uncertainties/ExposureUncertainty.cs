using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.Uncertainties;

/// <summary>How far off a whole exposure may be.</summary>
internal static class ExposureUncertainty
{
    /// <summary>One standard deviation of what the set-up aims at.</summary>
    /// <remarks>
    /// A white background stands and falls with the flash below, a dark one with the key. Where flash fills beside ambient light, both count by
    /// their share of the light.
    /// </remarks>
    /// <param name="kind">Way of lighting.</param>
    /// <param name="result">The exposure found.</param>
    /// <param name="budget">Account of the main flash; none without a flash.</param>
    /// <param name="ambient">One standard deviation of the ambient light.</param>
    public static Stops Of(SetUpKind kind, SetUpResult result, LightBudget? budget, Stops ambient)
    {
        if (budget is null)
        {
            return ambient;
        }

        if (kind is SetUpKind.WhiteBackground or SetUpKind.DarkBackground)
        {
            return budget.Uncertainty;
        }

        var share = AmbientShare(result);
        return new Stops(double.Hypot(share * ambient.Value, (1 - share) * budget.Uncertainty.Value));
    }

    /// <summary>Share of ambient light in the light on the subject [1]; 0 to 1.</summary>
    public static double AmbientShare(SetUpResult result)
    {
        var onSubject = result.Lights.Where(light => light.Subject is not null).Select(light => light.Power.Level).ToList();
        return onSubject.Count == 0 ? 1 : CombinedLight.ShareOf(result.AmbientLevel - CombinedLight.Sum(onSubject));
    }
}
