namespace StudioKit.Sheets.Layout;

/// <summary>Finished pages with what a PDF says about itself.</summary>
/// <param name="Title">Title that a viewer shows.</param>
/// <param name="Date">The date given by the caller; the file carries no other, and none where none was given.</param>
/// <param name="Pages">The pages, at least one.</param>
internal sealed record PagedDocument(string Title, DateOnly? Date, IReadOnlyList<Page> Pages)
{
    /// <summary>Language of the text, as BCP 47 writes it.</summary>
    public string Language { get; init; } = "en";

    /// <summary>Sides of the paper that a printer is asked to use; the front alone where there is one page.</summary>
    public PrintedSides Sides { get; init; } = Pages.Count < 2 ? PrintedSides.One
        : Pages[0].WidthMm > Pages[0].HeightMm ? PrintedSides.BothOverShortEdge
        : PrintedSides.BothOverLongEdge;
}
