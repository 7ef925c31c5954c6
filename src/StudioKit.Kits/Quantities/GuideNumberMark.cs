namespace StudioKit.Kits.Quantities;

/// <summary>A guide number as written, brought to ISO 100 [m], with the zoom it is quoted at [mm].</summary>
internal sealed record GuideNumberMark(double Meters, double? Zoom);
