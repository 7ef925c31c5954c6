using UnitsNet;

namespace StudioKit.Planning.Studio.Uprights;

/// <summary>Pieces of pipe of an upright sheet that are alike.</summary>
/// <param name="Role">What they are.</param>
/// <param name="Label">Name on the cut plan and on the pieces.</param>
/// <param name="Cut">Length to mark and cut, in half millimetres.</param>
/// <param name="Count">How many [1].</param>
public sealed record UprightPiece(UprightPieceRole Role, string Label, Length Cut, int Count);
