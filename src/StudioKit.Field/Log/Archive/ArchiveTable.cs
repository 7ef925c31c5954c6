namespace StudioKit.Field.Log.Archive;

/// <summary>One file of an archive: what its rows stand for, its terms and its rows, made as they are asked for. Column 0 is the identifier that joins the files.</summary>
internal sealed record ArchiveTable(string FileName, string RowType, IReadOnlyList<string> Terms, IEnumerable<IReadOnlyList<string>> Rows)
{
    /// <summary>Short name of a term, for the head of a column.</summary>
    public static string ShortName(string term) => term[(term.LastIndexOf('/') + 1)..];
}
