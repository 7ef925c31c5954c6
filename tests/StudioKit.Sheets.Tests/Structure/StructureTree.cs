using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;

namespace StudioKit.Sheets.Tests.Structure;

/// <summary>The structure of a file as another's reader finds it: the tree, and what the content streams mark.</summary>
internal sealed class StructureTree
{
    private readonly PdfDocument _file;
    private readonly Dictionary<IndirectReference, int> _pages = [];
    private readonly Lazy<IReadOnlyList<Page>> _read;
    private readonly Dictionary<int, IReadOnlyList<MarkedContentElement>> _marked = [];

    public StructureTree(byte[] file)
    {
        _file = PdfDocument.Open(file);
        _read = new(() => [.. _file.GetPages()]);
        Catalog = _file.Structure.Catalog.CatalogDictionary;
        var number = 0;
        foreach (var reference in PageReferences(Dictionary(Catalog.Data["Pages"]), (Catalog.Data["Pages"] as IndirectReferenceToken)!.Data))
        {
            _pages[reference] = ++number;
        }

        RootDictionary = Dictionary(Catalog.Data["StructTreeRoot"]);
        Root = Read(Items(RootDictionary.Data["K"]).Select(Dictionary).Single(), null);
    }

    public DictionaryToken Catalog { get; }

    public DictionaryToken RootDictionary { get; }

    /// <summary>The element of the whole document.</summary>
    public StructureNode Root { get; }

    public IEnumerable<StructureNode> All => Root.WithAll;

    public string Title => _file.Information.Title ?? "";

    public IReadOnlyList<Page> Pages => _read.Value;

    /// <summary>Stretches of a page's content that have a number, in the order of the stream, and those that are artefacts.</summary>
    public (IReadOnlyList<MarkedContentElement> Numbered, IReadOnlyList<MarkedContentElement> Artefacts) Marked(Page page)
    {
        if (!_marked.TryGetValue(page.Number, out var all))
        {
            _marked.Add(page.Number, all = page.GetMarkedContents());
        }

        return ([.. all.Where(marked => marked.MarkedContentIdentifier >= 0)], [.. all.Where(marked => marked.IsArtifact)]);
    }

    /// <summary>The text of an element and all that it holds.</summary>
    public string Said(StructureNode node) => string.Concat(node.AllContent.SelectMany(place =>
        Marked(Pages[place.Page - 1]).Numbered.Single(marked => marked.MarkedContentIdentifier == place.Content).Letters.Select(letter => letter.Value)));

    public DictionaryToken Dictionary(IToken token) => (DictionaryToken)Followed(token);

    public IReadOnlyList<IToken> Items(IToken token) => Followed(token) is ArrayToken array ? array.Data : [token];

    public string Text(DictionaryToken dictionary, string key) => dictionary.Data.TryGetValue(key, out var token) ? Followed(token) switch
    {
        StringToken text => text.Data,
        HexToken text => text.Data,
        NameToken name => name.Data,
        _ => "",
    } : "";

    private IToken Followed(IToken token) => token is IndirectReferenceToken reference ? _file.Structure.GetObject(reference.Data).Data : token;

    private StructureNode Read(DictionaryToken element, StructureNode? parent)
    {
        var node = new StructureNode { Name = Text(element, "S"), Dictionary = element, Parent = parent };
        foreach (var kid in element.Data.TryGetValue("K", out var kids) ? Items(kids) : [])
        {
            switch (Followed(kid))
            {
                case NumericToken number:
                    node.Content.Add((PageOf(element), number.Int));
                    break;
                case DictionaryToken other when Text(other, "Type") == "MCR":
                    node.Content.Add((PageOf(other), ((NumericToken)other.Data["MCID"]).Int));
                    break;
                case DictionaryToken other when Text(other, "Type") == "OBJR":
                    node.Objects.Add(Dictionary(other.Data["Obj"]));
                    break;
                case DictionaryToken child:
                    node.Children.Add(Read(child, node));
                    break;
                default:
                    throw new InvalidOperationException($"{kid} in {node.Name}.");
            }
        }

        return node;
    }

    private int PageOf(DictionaryToken dictionary) => _pages[((IndirectReferenceToken)dictionary.Data["Pg"]).Data];

    private IEnumerable<IndirectReference> PageReferences(DictionaryToken node, IndirectReference reference) => node.Data.TryGetValue("Kids", out var kids)
        ? Items(kids).OfType<IndirectReferenceToken>().SelectMany(kid => PageReferences(Dictionary(kid), kid.Data))
        : [reference];
}
