using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Layout;

/// <summary>One finished page: everything on it as plain data, so that any writer can print it.</summary>
/// <param name="WidthMm">Paper width [mm].</param>
/// <param name="HeightMm">Paper height [mm].</param>
/// <param name="Marks">What is printed, from the upper left corner of the paper.</param>
internal sealed record Page(double WidthMm, double HeightMm, IReadOnlyList<Primitive> Marks)
{
    public IReadOnlyList<Bookmark> Bookmarks { get; init; } = [];

    public IReadOnlyList<PageLink> Links { get; init; } = [];
}
