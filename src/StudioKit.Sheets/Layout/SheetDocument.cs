namespace StudioKit.Sheets.Layout;

/// <summary>A document before it is laid out on pages.</summary>
/// <param name="Title">Its title, printed on every page.</param>
/// <param name="Stamp">Where it came from.</param>
/// <param name="Setup">The paper.</param>
/// <param name="Blocks">What it says.</param>
internal sealed record SheetDocument(string Title, Stamp Stamp, PageSetup Setup, IReadOnlyList<Block> Blocks)
{
    /// <summary>True where a back must stay blank, as that of a template which is cut out.</summary>
    public bool OneSided { get; init; }
}
