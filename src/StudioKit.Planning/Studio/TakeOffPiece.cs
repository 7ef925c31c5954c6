using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>Pieces that are cut to other lengths where a fitting's take-off is another.</summary>
/// <param name="Pieces">Their letter where all that share it change alike, else their labels.</param>
/// <param name="Planned">What they are cut to by the plan.</param>
/// <param name="Cuts">What they are cut to at each take-off of the table; none where no frame comes of it.</param>
public sealed record TakeOffPiece(string Pieces, Length Planned, ValueList<Length?> Cuts);
