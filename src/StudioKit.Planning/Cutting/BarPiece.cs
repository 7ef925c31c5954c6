using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>Pieces of one length to be cut from bars.</summary>
/// <param name="Label">Name that the cut plan prints beside the piece.</param>
/// <param name="Length">Finished length; above zero, at most 1000 m.</param>
/// <param name="Count">How many [1]; at least 1.</param>
public sealed record BarPiece(string Label, Length Length, int Count = 1);
