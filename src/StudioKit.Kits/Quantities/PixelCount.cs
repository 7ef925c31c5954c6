namespace StudioKit.Kits.Quantities;

/// <summary>Two counts written together, as in <c>8192 x 5464</c>.</summary>
internal readonly record struct PixelCount(int Wide, int High);
