using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>The verdict on a whole plan as JSON.</summary>
public static class StudioVerdictJson
{
    /// <summary>Writes it under the key <c>verdict</c>.</summary>
    /// <param name="json">The document.</param>
    /// <param name="verdict">The verdict.</param>
    public static JsonReport Write(JsonReport json, StudioVerdict verdict)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(verdict);
        return json.Section("verdict", () => json
            .Flag("canBeBuilt", verdict.CanBeBuilt)
            .Count("cards", verdict.Cards)
            .Count("cardsAtTheEdge", verdict.AtTheEdge)
            .Count("cardsFailing", verdict.Failing)
            .Texts("failing", verdict.InTheWay.Select(check => MemberText.Of(check.Kind)).Distinct(StringComparer.Ordinal))
            .Text("says", StudioVerdictText.Of(verdict)));
    }
}
