using StudioKit.Planning.Studio;

namespace StudioKit.Sheets.Building;

/// <summary>How a holder that is built of the frame's pipe goes together, in words.</summary>
internal static class HolderText
{
    /// <summary>What a step is about, a few words.</summary>
    public static string Title(HolderStep step, BuiltHolder holder) => step switch
    {
        HolderStep.JoinPole => "Join the pole",
        HolderStep.JoinArm => $"Join the {Reach(holder)}",
        HolderStep.StandOnPeg => "Stand it on its peg",
        HolderStep.ClipToRail => "Clip it to the rail",
        HolderStep.TopWithBoom => "The boom on its tee",
        HolderStep.FastenFlash => "The flash",
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "A step without words."),
    };

    /// <summary>What to do, in sentences.</summary>
    public static string Of(HolderStep step, BuiltHolder holder) => step switch
    {
        HolderStep.JoinPole => Joined(holder.Poles, "pole"),
        HolderStep.JoinArm => Joined(holder.Arms, Reach(holder)),
        HolderStep.StandOnPeg => "Drive a peg that fills the pipe into the ground, upright, clear of where people walk, and push the pole over it until it stands firm.",
        HolderStep.ClipToRail => "Clip the arm to the frame's rail with both clips, a hand's breadth apart, so that it cannot turn.",
        HolderStep.TopWithBoom => "Push the branch of a tee onto the top of the pole and the boom into the tee's end. Where the card names less height, leave pieces of the pole out.",
        HolderStep.FastenFlash => $"Fasten the flash at the end of the {(holder.Arms == 0 ? "pole" : Reach(holder))}, tie it with a cord as well, and see that nothing leans or turns before an animal is under it.",
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "A step without words."),
    };

    private static string Reach(BuiltHolder holder) => holder.OnPeg ? "boom" : "arm";

    private static string Joined(int pieces, string what) => FormattableString.Invariant($"Push the {pieces} pieces of the {what} into their couplings, up to the marks.");
}
