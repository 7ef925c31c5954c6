using StudioKit.Physics;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>What changes in the cut list where one kind of fitting has another take-off than the kit says.</summary>
/// <param name="Kind">Which fitting.</param>
/// <param name="Name">As on the shopping list.</param>
/// <param name="Planned">Its take-off in the kit.</param>
/// <param name="TakeOffs">Other take-offs, in growing order.</param>
/// <param name="Pieces">Pieces that then are cut to another length; all others stay as they are.</param>
public sealed record TakeOffTable(FittingKind Kind, string Name, Length Planned, ValueList<Length> TakeOffs, ValueList<TakeOffPiece> Pieces);
