using StudioKit.Sheets.Documents;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>What a planned card's lights and day look like outdoors.</summary>
/// <param name="kits">The kits.</param>
internal sealed class OutdoorCards(PlannedKits kits)
{
    /// <summary>One card.</summary>
    public OutdoorsAnswer Answer(OutdoorsRequest request)
    {
        var plan = kits.Find(request.Hash)?.Plan;
        var exposure = plan?.Exposures.FirstOrDefault(exposure => exposure.SetUp == request.SetUp && exposure.Framing.Name == request.Framing);
        return exposure is null ? new OutdoorsAnswer("", [], "", [], []) : OutdoorsTelling.Of(plan!, exposure, PlaceDrawings.Svg(plan!, exposure));
    }
}
