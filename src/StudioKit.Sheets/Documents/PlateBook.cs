namespace StudioKit.Sheets.Documents;

/// <summary>Plates before they are printed.</summary>
/// <param name="Title">Title of the catalogue.</param>
/// <param name="WidthMm">Paper width [mm].</param>
/// <param name="HeightMm">Paper height [mm].</param>
/// <param name="Scale">What holds for the scale of every page, in words.</param>
/// <param name="Date">Date to print; none where none is given.</param>
/// <param name="Pages">The portraits of each page.</param>
public sealed record PlateBook(
    string Title, double WidthMm, double HeightMm, string Scale, DateOnly? Date, IReadOnlyList<IReadOnlyList<PlateFigure>> Pages)
{
    /// <summary>What the reader must know of all pages, e.g. what was left out; printed at the foot of the last one.</summary>
    public string Note { get; init; } = "";
}
