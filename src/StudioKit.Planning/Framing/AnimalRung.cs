using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>Which cards show animals of a range of lengths whole, and largest.</summary>
/// <param name="Over">Animals longer than this.</param>
/// <param name="UpTo">No longer than this.</param>
/// <param name="Cards">For each set-up the closest framings that still show them whole; a set-up without any is left out.</param>
public sealed record AnimalRung(Length Over, Length UpTo, ValueList<RungCard> Cards);
