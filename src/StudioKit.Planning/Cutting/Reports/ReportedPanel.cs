namespace StudioKit.Planning.Cutting.Reports;

/// <summary>One piece on a sheet in plain numbers.</summary>
/// <param name="Label">The piece's name.</param>
/// <param name="XMm">Left edge, from the squared left edge [mm].</param>
/// <param name="YMm">Lower edge, from the squared lower edge [mm].</param>
/// <param name="WidthMm">Side along X as it lies [mm].</param>
/// <param name="HeightMm">Side along Y as it lies [mm].</param>
/// <param name="Turned">Whether it lies turned by a quarter.</param>
public sealed record ReportedPanel(string Label, double XMm, double YMm, double WidthMm, double HeightMm, bool Turned);
