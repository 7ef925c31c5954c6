namespace StudioKit.Kits.Quantities;

/// <summary>An f-number, or none where the best is wanted.</summary>
internal sealed record ApertureChoice(double? FNumber);
