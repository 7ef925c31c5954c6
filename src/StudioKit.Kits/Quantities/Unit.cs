namespace StudioKit.Kits.Quantities;

/// <summary>One unit symbol: value in the dimension's own unit = number × factor + offset.</summary>
internal sealed record Unit(string Symbol, UnitDimension Dimension, double Factor, double Offset = 0);
