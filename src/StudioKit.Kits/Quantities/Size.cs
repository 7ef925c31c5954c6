using UnitsNet;

namespace StudioKit.Kits.Quantities;

/// <summary>Two lengths written together, as in <c>36 mm x 24 mm</c>.</summary>
internal readonly record struct Size(Length First, Length Second);

