namespace StudioKit.Kits.Quantities;

/// <summary>Smallest and largest number in a value.</summary>
internal readonly record struct Extent(double Least, double Most);
