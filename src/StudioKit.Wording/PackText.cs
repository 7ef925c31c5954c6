using StudioKit.Planning;
using StudioKit.Planning.Packing;

namespace StudioKit.Wording;

/// <summary>What goes in no bag, and what to mind of what does.</summary>
internal static class PackText
{
    public static string Of(Misfit misfit) => misfit.Size is { } size
        ? $"{misfit.Words}, {PlanFormat.Millimetres(size.Longest)} × {PlanFormat.Millimetres(size.Middle)} × {PlanFormat.Millimetres(size.Shortest)}, goes in no bag that it may go in, nor can it be strapped outside."
        : $"{misfit.Words} goes in no bag.";

    public static string Of(LongPieceCaveat caveat) => caveat switch
    {
        { Kind: LongPieceCaveatKind.TooThick } => "It is thicker than the bag is wide.",
        { Kind: LongPieceCaveatKind.SticksOut } => "It sticks out over the bag by more than a tenth: mind branches, doors and other people's eyes.",
        { Kind: LongPieceCaveatKind.LargerThanBack, Size: { } size } =>
            $"The panel is {PlanFormat.Rectangle(size.Longest, size.Middle)}, the back of {caveat.Bag} {PlanFormat.Rectangle(caveat.Inside.Longest, caveat.Inside.Middle)}: pad the corners, mind the wind.",
        _ => throw new ArgumentOutOfRangeException(nameof(caveat), caveat.Kind, "A caveat without words."),
    };
}
