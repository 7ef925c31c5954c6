using System.Globalization;

namespace StudioKit.Sheets.Layout;

/// <summary>Where a chapter's pages stand in what they are bound into.</summary>
/// <param name="First">Number of the chapter's first page.</param>
/// <param name="Count">Number of all pages, other chapters' included.</param>
internal readonly record struct PageRun(int First, int Count)
{
    /// <summary>From one of the chapter's pages to the next [1]: 2 where each has a blank back.</summary>
    public int Step { get; init; } = 1;

    /// <summary>What the chapter's page at an index from 0 says in its foot.</summary>
    public string Says(int index) => string.Create(CultureInfo.InvariantCulture, $"Page {First + (index * Step)} of {Count}");
}
