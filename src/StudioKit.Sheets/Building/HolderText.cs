using StudioKit.Planning.Studio;

namespace StudioKit.Sheets.Building;

/// <summary>How a holder that is built of the frame's pipe goes together, in words.</summary>
internal static class HolderText
{
    /// <summary>The steps, in order.</summary>
    /// <param name="holder">The holder.</param>
    /// <exception cref="ArgumentNullException">There is no holder.</exception>
    public static IReadOnlyList<string> Steps(BuiltHolder holder)
    {
        ArgumentNullException.ThrowIfNull(holder);
        return [.. new[] { Joined(holder.Poles, "pole"), Joined(holder.Arms, holder.OnPeg ? "boom" : "arm"), Stood(holder), holder.Tees > 0 ? Topped : "", Ended(holder) }.Where(step => step.Length > 0)];
    }

    private const string Topped = "Push the branch of a tee onto the top of the pole and the boom into the tee's end. Where the card names less height, leave pieces of the pole out.";

    private static string Joined(int pieces, string what) => pieces > 1 ? FormattableString.Invariant($"Push the {pieces} pieces of the {what} into their couplings, up to the marks.") : "";

    private static string Stood(BuiltHolder holder) => holder.OnPeg
        ? "Drive a peg that fills the pipe into the ground, upright, clear of where people walk, and push the pole over it until it stands firm."
        : "Clip the arm to the frame's rail with both clips, a hand's breadth apart, so that it cannot turn.";

    private static string Ended(BuiltHolder holder) =>
        $"Fasten the flash at the end of the {(holder.Arms == 0 ? "pole" : holder.OnPeg ? "boom" : "arm")}, tie it with a cord as well, and see that nothing leans or turns before an animal is under it.";
}
