using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>What planned cards ask for in other light.</summary>
/// <param name="kits">The kits.</param>
internal sealed class SceneLights(PlannedKits kits)
{
    /// <summary>One card.</summary>
    public SceneLightAnswer Answer(CardRequest request)
    {
        var plan = kits.Find(request.Hash)?.Plan;
        var exposure = plan?.Exposures.FirstOrDefault(exposure => exposure.SetUp == request.SetUp && exposure.Framing.Name == request.Framing);
        return new SceneLightAnswer(exposure is null ? [] : SceneLightTelling.Of(exposure, plan!.Advice.WhenLightChanges(exposure)));
    }
}
