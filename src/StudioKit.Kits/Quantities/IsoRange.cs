using StudioKit.Physics.Exposure;

namespace StudioKit.Kits.Quantities;

/// <summary>Two ISO speeds, as in <c>100 to 6400</c>.</summary>
internal sealed record IsoRange(IsoSpeed Lowest, IsoSpeed Highest);
