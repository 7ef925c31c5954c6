using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>Pieces that the plan could not cut.</summary>
/// <param name="Label">The piece's name.</param>
/// <param name="Side">Length of a bar's piece, width of a sheet's; up to the next tenth of a millimetre.</param>
/// <param name="OtherSide">Height of a sheet's piece; none of a bar's.</param>
/// <param name="Count">How many are missing [1].</param>
/// <param name="Reason">Why.</param>
public sealed record UncutPiece(string Label, Length Side, Length? OtherSide, int Count, UncutReason Reason);
