using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Planned studios in space.</summary>
/// <param name="kits">The kits.</param>
internal sealed class Solids(PlannedKits kits)
{
    /// <summary>One studio.</summary>
    public SolidAnswer Answer(SolidRequest request) =>
        kits.Find(request.Hash)?.Plan is { } plan && plan.PanelLights.FirstOrDefault(light => light.SetUp == request.SetUp) is { } light
            ? SolidTelling.Of(plan, light, request.Framing)
            : new SolidAnswer("Nothing is planned.", 0, [], [], [], [], default);
}
