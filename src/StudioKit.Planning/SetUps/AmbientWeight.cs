using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.SetUps;

/// <summary>How much of the light on the subject is ambient light, and what that does to the uncertainty.</summary>
internal static class AmbientWeight
{
    /// <summary>Share of ambient light in the light on the subject [1]; 0 to 1.</summary>
    public static double Of(SetUpResult result)
    {
        var onSubject = result.Lights.Where(light => light.Subject is not null).Select(light => light.Power.Level).ToList();
        return onSubject.Count == 0 ? 1 : CombinedLight.ShareOf(result.SubjectAmbientLevel - CombinedLight.Sum(onSubject));
    }

    /// <summary>One standard deviation where flash fills beside ambient light: both count by their share of the light.</summary>
    public static Stops Uncertainty(SetUpResult result, LightBudget main, Stops ambient)
    {
        var share = Of(result);
        return new Stops(double.Hypot(share * ambient.Value, (1 - share) * main.Uncertainty.Value));
    }
}
