using StudioKit.Planning.Checks;

namespace StudioKit.Wording;

/// <summary>What to bear in mind of a check.</summary>
internal static class CaveatText
{
    public static string Of(CheckCaveat caveat) => caveat switch
    {
        CheckCaveat.OfStructure structural => StructureCaveatText.Of(structural.Caveat),
        CheckCaveat.OfFrame frame => FrameText.Of(frame.Caveat),
        CheckCaveat.OfTrigger trigger => FiringText.Of(trigger.Caveat),
        CheckCaveat.OfLongPiece piece => PackText.Of(piece.Caveat),
        _ => throw new ArgumentOutOfRangeException(nameof(caveat), caveat, "A caveat without words."),
    };
}
