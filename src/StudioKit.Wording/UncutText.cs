using StudioKit.Planning;
using StudioKit.Planning.Cutting;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Pieces that can't be cut, in words.</summary>
public static class UncutText
{
    /// <summary>Which pieces, why, and what to do.</summary>
    public static string Of(UncutPiece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var size = piece.OtherSide is { } other ? $"{Side(piece.Side)} x {Side(other)}" : Side(piece.Side);
        return piece.Reason == UncutReason.TooLarge
            ? $"'{piece.Label}' ({size}) is larger than any stock allows: take larger stock or split the piece."
            : FormattableString.Invariant($"'{piece.Label}' ({size}) is missing {piece.Count} times for want of stock: add stock.");
    }

    private static string Side(Length side) => CutFormat.CutLength(side);
}
