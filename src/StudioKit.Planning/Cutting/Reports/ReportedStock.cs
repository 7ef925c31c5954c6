namespace StudioKit.Planning.Cutting.Reports;

/// <summary>Stock left after a job, in plain numbers.</summary>
/// <param name="Label">Its name.</param>
/// <param name="LengthMm">Length of a bar [mm]; null for a sheet.</param>
/// <param name="WidthMm">Width of a sheet [mm]; null for a bar.</param>
/// <param name="HeightMm">Height of a sheet [mm]; null for a bar.</param>
/// <param name="Price">Price [1]; 0 for an offcut.</param>
/// <param name="Count">How many [1].</param>
public sealed record ReportedStock(string Label, double? LengthMm, double? WidthMm, double? HeightMm, decimal Price, int? Count);
