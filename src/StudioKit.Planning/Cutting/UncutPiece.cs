namespace StudioKit.Planning.Cutting;

/// <summary>Pieces that the plan could not cut.</summary>
/// <param name="Label">The piece's name.</param>
/// <param name="Size">Its size, for a person to read.</param>
/// <param name="Count">How many are missing [1].</param>
/// <param name="Reason">Why.</param>
public sealed record UncutPiece(string Label, string Size, int Count, UncutReason Reason)
{
    /// <summary>The whole matter as a sentence.</summary>
    public string Sentence => Reason == UncutReason.TooLarge
        ? $"'{Label}' ({Size}) is larger than any stock allows: take larger stock or split the piece."
        : $"'{Label}' ({Size}) is missing {Count} times for want of stock: add stock.";
}
