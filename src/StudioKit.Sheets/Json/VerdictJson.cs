using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>Whether an exposure works, as JSON.</summary>
internal static class VerdictJson
{
    /// <summary>Writes the verdict.</summary>
    public static void Write(JsonReport json, ExposurePlan exposure) => json
        .Text("is", MemberText.Of(exposure.Verdict.Verdict))
        .Flag("usable", exposure.IsUsable)
        .Number("firstFrameRight", exposure.Verdict.FirstFrame)
        .Number("greyCorner", exposure.Verdict.GreyCorner)
        .Number("backgroundShows", exposure.Verdict.BackgroundShows)
        .List("missed", exposure.Verdict.Missed, limit => json
            .Text("limit", MemberText.Hyphenated(limit.GetType().Name))
            .Stops("by", limit.By)
            .Text("says", LimitText.Of(limit)));
}
