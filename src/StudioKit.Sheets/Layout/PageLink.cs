using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Layout;

/// <summary>A place on a page that leads to another page.</summary>
/// <param name="Area">Where one may click [mm].</param>
/// <param name="Page">The page it leads to, counted from 1.</param>
internal sealed record PageLink(Bounds Area, int Page);
