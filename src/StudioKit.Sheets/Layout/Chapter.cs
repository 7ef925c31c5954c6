namespace StudioKit.Sheets.Layout;

/// <summary>A document laid out but for the numbers of its pages, so that it can stand alone or in a book.</summary>
/// <param name="Title">Its title.</param>
/// <param name="PageCount">How many pages it has.</param>
/// <param name="Finish">Makes the pages once their numbers are known.</param>
/// <param name="Problems">What did not fit and why, in words for a person; empty where all did.</param>
internal sealed record Chapter(string Title, int PageCount, Func<PageRun, IReadOnlyList<Page>> Finish, IReadOnlyList<string> Problems)
{
    /// <summary>Whether it begins on a right-hand page of a book, as what is cut apart must.</summary>
    public bool StartsRight { get; init; }

    /// <summary>True where a back must stay blank, as that of a template which is cut out.</summary>
    public bool OneSided { get; init; }

    /// <summary>The chapter as a document of its own.</summary>
    public LaidDocument Alone(Stamp stamp)
    {
        var document = new PagedDocument($"{stamp.KitName}: {Title}", stamp.Date, Finish(new PageRun(1, PageCount)));
        return new LaidDocument(OneSided ? document with { Sides = PrintedSides.One } : document, Problems);
    }
}
