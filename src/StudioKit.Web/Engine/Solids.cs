using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Planned studios in space.</summary>
/// <param name="kits">The kits.</param>
internal sealed class Solids(PlannedKits kits)
{
    /// <summary>One studio.</summary>
    public SolidAnswer Answer(SolidRequest request) =>
        kits.Find(request.Hash) is { } kit && kit.Light(request.SetUp) is { } light
            ? SolidTelling.Of(kit.Plan, light, request.Framing)
            : new SolidAnswer("Nothing is planned.", 0, [], [], [], [], default);
}
