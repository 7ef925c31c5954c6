using UglyToad.PdfPig.Tokens;

namespace StudioKit.Sheets.Tests.Structure;

/// <summary>An element of a file's structure tree, read back.</summary>
internal sealed class StructureNode
{
    public required string Name { get; init; }

    public required DictionaryToken Dictionary { get; init; }

    public StructureNode? Parent { get; init; }

    public List<StructureNode> Children { get; } = [];

    /// <summary>Its own content in the order of the tree: number of the page from 1, and of the content on it.</summary>
    public List<(int Page, int Content)> Content { get; } = [];

    /// <summary>Annotations that belong to it.</summary>
    public List<DictionaryToken> Objects { get; } = [];

    public IEnumerable<StructureNode> WithAll => Children.SelectMany(child => child.WithAll).Prepend(this);

    /// <summary>Content of it and all that it holds.</summary>
    public IEnumerable<(int Page, int Content)> AllContent => WithAll.SelectMany(node => node.Content);
}
