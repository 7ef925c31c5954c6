using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Uprights;

namespace StudioKit.Wording;

/// <summary>Light that a sheet behind the subject throws round its edges, in words.</summary>
public static class EdgeSpillText
{
    /// <summary>The edge that gets most, as a sentence.</summary>
    /// <param name="spill">The light.</param>
    public static string Of(EdgeSpillPlan spill)
    {
        ArgumentNullException.ThrowIfNull(spill);
        var limb = spill.Strongest;
        return $"Sheet's light on the {MemberText.Of(limb.Limb)} edge: {Against(limb)} stops against the lights on the subject, {Strongest(spill)}.";
    }

    /// <summary>What the edge that gets most is like by itself, and how wide a rim it has.</summary>
    /// <param name="spill">The light.</param>
    public static string Strongest(EdgeSpillPlan spill)
    {
        ArgumentNullException.ThrowIfNull(spill);
        return $"{Tenths(spill.Strongest.Level)} against correct exposure; {Rim(spill.Strongest)}";
    }

    /// <summary>The same for a card: in short where no rim is lit by the sheet.</summary>
    /// <param name="spill">The light.</param>
    public static string OfCard(EdgeSpillPlan spill)
    {
        ArgumentNullException.ThrowIfNull(spill);
        var limb = spill.Strongest;
        return $"Sheet's light on the {MemberText.Of(limb.Limb)} edge: {Against(limb)} stops against the lights on the subject{(limb.RimShare > 0 ? $", {Rim(limb)}" : "")}.";
    }

    /// <summary>Level against the lights on the subject, without a unit.</summary>
    /// <param name="limb">An edge; none where none of the light reaches it.</param>
    public static string Against(LimbSpill? limb) => limb is null ? "none" : Tenths(limb.AgainstKey);

    private static string Rim(LimbSpill limb) => limb.RimShare > 0
        ? $"within {AdviceText.Amount(-EdgeSpillPlan.RimFrom)} of them over {MeasureFormat.ThreeDigits(Math.Round(100 * limb.RimShare, 1))} % of a round stem's width"
        : $"nowhere within {AdviceText.Amount(-EdgeSpillPlan.RimFrom)} of them";

    private static string Tenths(Physics.Exposure.Stops stops) => FormattableString.Invariant($"{stops.Value:+0.0;-0.0;0.0}");
}
