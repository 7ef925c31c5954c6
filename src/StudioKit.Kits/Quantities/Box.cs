using UnitsNet;

namespace StudioKit.Kits.Quantities;

/// <summary>Three lengths written together, as in <c>600 mm x 300 mm x 220 mm</c>.</summary>
internal readonly record struct Box(Length First, Length Second, Length Third);
