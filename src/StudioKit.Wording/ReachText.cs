using StudioKit.Physics.Optics;
using StudioKit.Planning;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Why a magnification is out of reach, and what would reach it.</summary>
public static class ReachText
{
    /// <summary>One or two sentences.</summary>
    /// <param name="limit">Why it is out of reach.</param>
    public static string Of(ReachLimit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return limit switch
        {
            { Nearest: null } => $"The lens comes to no focus on a real subject.{Tube(limit)}",
            { Kind: ReachLimitKind.TooLarge } => $"Everything on hand together reaches {Figure(limit.Nearest.Value)}, short of {Figure(limit.Wanted)}.{Tube(limit)}",
            { Kind: ReachLimitKind.TooSmall } => $"The least that the lens gives is {Figure(limit.Nearest.Value)}, above {Figure(limit.Wanted)}: take accessories off.",
            _ => $"{Figure(limit.Wanted)} falls in a gap between what the combinations on hand reach, {Figure(limit.Nearest.Value)} nearest.{Tube(limit)}",
        };
    }

    private static string Tube(ReachLimit limit) =>
        limit.LeastExtension > Length.Zero ? $" {PlanFormat.GearMillimetres(limit.LeastExtension)} of extension tubes alone would reach it." : "";

    private static string Figure(Magnification magnification) => FormattableString.Invariant($"{magnification.Value:0.###}");
}
