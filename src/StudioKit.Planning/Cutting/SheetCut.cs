using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>One cut from edge to edge of a region.</summary>
/// <param name="Direction">Which way it runs.</param>
/// <param name="Position">Where the left or lower part ends, from the sheet's squared edge; the kerf lies beyond.</param>
/// <param name="First">The left or lower part.</param>
/// <param name="Second">The right or upper part; null where the kerf eats it up.</param>
public sealed record SheetCut(SheetCutDirection Direction, Length Position, SheetRegion First, SheetRegion? Second);
