using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>Rectangular pieces of one size to be cut from sheets.</summary>
/// <param name="Label">Name that the cut plan prints on the piece.</param>
/// <param name="Width">Finished side along the sheet's width.</param>
/// <param name="Height">Finished side along the sheet's height.</param>
/// <param name="Count">How many [1]; at least 1.</param>
/// <param name="MayTurn">Whether the piece may lie turned by a quarter; false keeps the grain or film direction.</param>
public sealed record SheetPiece(string Label, Length Width, Length Height, int Count = 1, bool MayTurn = true);
