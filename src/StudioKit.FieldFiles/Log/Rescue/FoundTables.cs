namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>The rows of a damaged log: by table where the way to them is left, and those that no table leads to any more.</summary>
internal sealed class FoundTables
{
    private readonly LogPages _pages;
    private readonly HashSet<int> _visited = [];

    public FoundTables(LogPages pages)
    {
        _pages = pages;

        // Kind, name, table, first page and text of each object of the file.
        foreach (var row in Walk(1, "the list of tables"))
        {
            if (row.Values is ["table", string name, _, long first, ..] && !Tables.ContainsKey(name))
            {
                Tables[name] = Walk((int)Math.Clamp(first, 0, int.MaxValue), name);
            }
        }

        Strays = [.. Enumerable.Range(1, pages.Count).Where(IsStray).SelectMany(number => Leaf(number, "no table"))];
    }

    /// <summary>Rows by the name of their table.</summary>
    public Dictionary<string, List<FoundRow>> Tables { get; } = new(StringComparer.Ordinal);

    /// <summary>Rows in pages that no table leads to and that are not marked as free.</summary>
    public IReadOnlyList<FoundRow> Strays { get; }

    /// <summary>What could not be read.</summary>
    public List<RescueNote> Notes { get; } = [];

    private List<FoundRow> Walk(int number, string table)
    {
        if (!_visited.Add(number) || _pages.Free.Contains(number))
        {
            return [];
        }

        var kind = PageCells.Kind(_pages[number], number);
        if (kind == PageCells.Interior)
        {
            return [.. PageCells.Children(_pages, number).SelectMany(child => Walk(child, table))];
        }

        if (kind == PageCells.Leaf)
        {
            return Leaf(number, table);
        }

        Notes.Add(new RescueNote(RescueNoteKind.PageUnreadable, table, FormattableString.Invariant($"{number}")));
        return [];
    }

    private List<FoundRow> Leaf(int number, string table)
    {
        var rows = PageCells.Rows(_pages, number);
        var lost = rows.Count(row => row is null);
        if (lost > 0)
        {
            Notes.Add(new RescueNote(RescueNoteKind.RowsUnreadable, table, FormattableString.Invariant($"{lost}")));
        }

        return [.. rows.OfType<(long RowId, object?[] Values)>().Select(row => new FoundRow(row.RowId, row.Values, lost > 0))];
    }

    private bool IsStray(int number) => !_visited.Contains(number) && !_pages.Free.Contains(number) && PageCells.Kind(_pages[number], number) == PageCells.Leaf;
}
