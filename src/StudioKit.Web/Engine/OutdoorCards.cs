using StudioKit.Sheets.Documents;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine;

/// <summary>What a planned card's lights and day look like outdoors.</summary>
/// <param name="kits">The kits.</param>
internal sealed class OutdoorCards(PlannedKits kits)
{
    /// <summary>One card.</summary>
    public OutdoorsAnswer Answer(CardRequest request)
    {
        var plan = kits.Find(request.Hash)?.Plan;
        var exposure = plan?.Exposures.FirstOrDefault(exposure => exposure.SetUp == request.SetUp && exposure.Framing.Name == request.Framing);
        return exposure is null ? new OutdoorsAnswer([], "", []) : new OutdoorsAnswer(
            [.. plan!.LightStands.Where(stand => stand.SetUp == request.SetUp && stand.Framing == request.Framing).Select(stand => $"{RoleText.Title(stand.Role)}: {StandText.Where(stand)}; {StandText.Held(stand)}.")],
            plan.Day is { } day ? $"{DayText.Title(day)}. {DayText.Events(day)}" : "",
            PlaceDrawings.Of(plan, exposure));
    }
}
