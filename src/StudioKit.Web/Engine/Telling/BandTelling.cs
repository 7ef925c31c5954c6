using StudioKit.Physics.Exposure;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine.Telling;

/// <summary>What white margins mean: bounds from the plan, words from here.</summary>
internal static class BandTelling
{
    /// <summary>The bands, darkest first; one that has no room is left out.</summary>
    /// <param name="target">Least margin that the set-up asks for.</param>
    /// <param name="highest">Margin above which the panel's glare washes out the subject; none where there is no such limit.</param>
    public static IEnumerable<MarginBand> Of(Stops target, Stops? highest)
    {
        yield return new MarginBand(null, MarginBandKind.Grey, "grey, not white");
        var asked = Math.Max(0, target.Value);
        if (asked > 0)
        {
            yield return new MarginBand(0, MarginBandKind.Tight, $"white, but under the {AdviceText.Amount(target)} asked for");
        }

        if (highest is not { } most)
        {
            yield return new MarginBand(asked, MarginBandKind.White, "white, as asked for");
            yield break;
        }

        if (most.Value > asked)
        {
            yield return new MarginBand(asked, MarginBandKind.White, $"white, as asked for, up to {AdviceText.Amount(most)}");
        }

        yield return new MarginBand(Math.Max(asked, most.Value), MarginBandKind.Veil, "so bright that it washes out the subject");
    }
}
