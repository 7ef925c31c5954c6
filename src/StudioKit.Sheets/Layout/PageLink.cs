using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>A place on a page that leads to another page.</summary>
/// <param name="Area">Where one may click [mm].</param>
/// <param name="Page">The page it leads to, counted from 1.</param>
internal sealed record PageLink(Bounds Area, int Page)
{
    /// <summary>The text that leads there; none where it is a mere place.</summary>
    public Tag? Tag { get; init; }
}
