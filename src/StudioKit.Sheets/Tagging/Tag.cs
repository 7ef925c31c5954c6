namespace StudioKit.Sheets.Tagging;

/// <summary>A part of a document's structure. Marks that bear the same tag belong together, whatever page they stand on.</summary>
/// <param name="kind">What it is.</param>
/// <param name="parent">What it is part of; none where it is part of the document itself.</param>
internal sealed class Tag(TagKind kind, Tag? parent = null)
{
    /// <summary>Ornament.</summary>
    public static Tag Ornament { get; } = new(TagKind.Ornament);

    /// <summary>What is said on every page at its head.</summary>
    public static Tag Header { get; } = new(TagKind.Header);

    /// <summary>What is said on every page at its foot.</summary>
    public static Tag Footer { get; } = new(TagKind.Footer);

    /// <summary>Marks to cut along.</summary>
    public static Tag CutMark { get; } = new(TagKind.CutMark);

    public TagKind Kind => kind;

    public Tag? Parent => parent;

    /// <summary>Level of a heading, 1 at the top.</summary>
    public int Level { get; init; }

    /// <summary>What is said in its place to somebody who cannot see it: of a figure what it shows, of a drawn sign what it means.</summary>
    public string Says { get; init; } = "";

    /// <summary>Whether the marks of a list are numbers.</summary>
    public bool Numbered { get; init; }

    /// <summary>Parts that it has in this order even where they are empty, as a row has its cells.</summary>
    public IReadOnlyList<Tag> Parts { get; private set; } = [];

    /// <summary>True where it is not read.</summary>
    public bool IsArtefact => kind <= TagKind.CutMark;

    /// <summary>A row with its cells.</summary>
    public static Tag Row(Tag table, TagKind cell, int cells)
    {
        var row = new Tag(TagKind.Row, table);
        row.Parts = [.. Enumerable.Range(0, cells).Select(_ => new Tag(cell, row))];
        return row;
    }

    /// <summary>An item of a list with its marker, in words where the marker is drawn, and its text.</summary>
    public static Tag Item(Tag list, string marker)
    {
        var item = new Tag(TagKind.ListItem, list);
        item.Parts = [new Tag(TagKind.ItemMarker, item) { Says = marker }, new Tag(TagKind.ItemText, item)];
        return item;
    }
}
