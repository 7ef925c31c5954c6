using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>One piece in its place on a bar.</summary>
/// <param name="Label">The piece's name.</param>
/// <param name="Length">The piece's finished length.</param>
/// <param name="Start">Where it starts, from the bar's squared end.</param>
/// <param name="End">Where it ends; the saw's kerf lies beyond this mark.</param>
public sealed record CutMark(string Label, Length Length, Length Start, Length End);
