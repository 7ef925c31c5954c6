using StudioKit.Physics.Exposure;

namespace StudioKit.Kits.Quantities;

/// <summary>Two f-numbers, as in <c>f/2.8 to f/32</c>.</summary>
internal sealed record ApertureRange(FNumber Widest, FNumber Smallest);
