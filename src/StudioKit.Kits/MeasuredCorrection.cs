using StudioKit.Physics.Exposure;

namespace StudioKit.Kits;

/// <summary>One figure of a kit that readings in the field have put right.</summary>
/// <param name="Quantity">What it is, in words, e.g. <c>guide number of sedge</c>.</param>
/// <param name="Path">Where the kit says it, e.g. <c>flashes[0].guide-number</c>.</param>
/// <param name="Before">As the kit has it, in <paramref name="Unit"/>.</param>
/// <param name="After">As the plan uses it, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit of both; empty for a ratio.</param>
/// <param name="Correction">The correction, more light being positive.</param>
/// <param name="PlusMinus">Its standard uncertainty.</param>
public sealed record MeasuredCorrection(string Quantity, string Path, double Before, double After, string Unit, Stops Correction, Stops PlusMinus);
