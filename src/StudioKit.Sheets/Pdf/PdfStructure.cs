using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Pdf;

/// <summary>The structure tree of a file (ISO 32000-1, 14.7): headings, paragraphs, lists, tables and figures in the order in which they are read.</summary>
/// <remarks>It is written by us, as PDFsharp's own builder searches its list of parents anew for every mark.</remarks>
internal sealed class PdfStructure
{
    private const double PointsPerMillimetre = 72 / 25.4;

    private readonly PdfDocument _file;
    private readonly PdfDictionary _root;
    private readonly PdfDictionary _document;
    private readonly Dictionary<Tag, Element> _elements = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<PdfPage, PdfArray> _parents = [];
    private readonly List<PdfItem> _links = [];
    private int _lastLevel;

    public PdfStructure(PdfDocument file)
    {
        _file = file;
        _root = Indirect(new PdfDictionary(file));
        _root.Elements.SetName("/Type", "/StructTreeRoot");
        _document = NewElement("Document", _root);
        _root.Elements["/K"] = new PdfArray(file, _document.Reference!);
        file.Internals.Catalog.Elements["/StructTreeRoot"] = _root.Reference;
        var marked = new PdfDictionary(file);
        marked.Elements.SetBoolean("/Marked", true);
        file.Internals.Catalog.Elements["/MarkInfo"] = marked;
        Kids(_document);
    }

    /// <summary>The standard structure type of a tag, a heading without its level.</summary>
    public static string NameOf(Tag tag) => tag.Kind switch
    {
        TagKind.Heading => "H",
        TagKind.List => "L",
        TagKind.ListItem => "LI",
        TagKind.ItemMarker => "Lbl",
        TagKind.ItemText => "LBody",
        TagKind.Table => "Table",
        TagKind.Row => "TR",
        TagKind.ColumnHead => "TH",
        TagKind.Cell => "TD",
        TagKind.Sign => "Span",
        TagKind.Figure => "Figure",
        TagKind.Caption => "Caption",
        TagKind.Contents => "TOC",
        TagKind.ContentsItem => "TOCI",
        TagKind.Link => "Link",
        _ => "P",
    };

    /// <summary>Adds a stretch of a page's content to its element.</summary>
    /// <returns>Its number on the page.</returns>
    public int Add(Tag tag, PdfPage page)
    {
        var element = Of(tag);
        var parents = ParentsOn(page);
        var number = parents.Elements.Count;
        parents.Elements.Add(element.Dictionary.Reference!);
        if (element.Page is null)
        {
            element.Page = page;
            element.Dictionary.Elements["/Pg"] = page.Reference;
        }

        element.Kids.Elements.Add(element.Page == page ? new PdfInteger(number) : OnAnotherPage(page, number));
        return number;
    }

    /// <summary>Says where on its page a figure stands.</summary>
    public void Place(Tag figure, Bounds covered, double pageHeight)
    {
        var attributes = Attributes("/Layout");
        attributes.Elements.SetName("/Placement", "/Block");
        attributes.Elements["/BBox"] = new PdfArray(
            _file, Points(covered.Left), Points(pageHeight - covered.Bottom), Points(covered.Right), Points(pageHeight - covered.Top));
        _elements[figure].Dictionary.Elements["/A"] = attributes;
    }

    /// <summary>Ties what may be clicked to the text that it lies over.</summary>
    public void Tie(PdfAnnotation annotation, PdfPage page, Tag link)
    {
        var reference = new PdfDictionary(_file);
        reference.Elements.SetName("/Type", "/OBJR");
        reference.Elements["/Obj"] = annotation.Reference;
        reference.Elements["/Pg"] = page.Reference;
        var element = Of(link);
        element.Kids.Elements.Add(reference);
        annotation.Elements.SetInteger("/StructParent", _file.PageCount + _links.Count);
        _links.Add(element.Dictionary.Reference!);
    }

    /// <summary>Writes what leads from each page's content back to its elements.</summary>
    public void Finish()
    {
        var numbers = new PdfArray(_file);
        for (var i = 0; i < _file.PageCount; i++)
        {
            var page = _file.Pages[i];
            page.Elements.SetName("/Tabs", "/S");
            page.Elements.SetInteger("/StructParents", i);
            numbers.Elements.Add(new PdfInteger(i));
            numbers.Elements.Add(Indirect(ParentsOn(page)).Reference!);
        }

        for (var i = 0; i < _links.Count; i++)
        {
            numbers.Elements.Add(new PdfInteger(_file.PageCount + i));
            numbers.Elements.Add(_links[i]);
        }

        var tree = Indirect(new PdfDictionary(_file));
        tree.Elements["/Nums"] = numbers;
        _root.Elements["/ParentTree"] = tree.Reference;
        _root.Elements.SetInteger("/ParentTreeNextKey", _file.PageCount + _links.Count);
    }

    private static PdfReal Points(double millimetres) => new(Math.Round(millimetres * PointsPerMillimetre, 2));

    private Element Of(Tag tag)
    {
        if (_elements.TryGetValue(tag, out var known))
        {
            return known;
        }

        // A part stands in its place among the others, so it is made with the whole that it belongs to.
        var parent = tag.Parent is { } above ? Of(above) : null;
        if (_elements.TryGetValue(tag, out known))
        {
            return known;
        }

        var element = New(tag, parent);
        foreach (var part in tag.Parts)
        {
            New(part, element);
        }

        return element;
    }

    private Element New(Tag tag, Element? parent)
    {
        var (above, kids) = parent is null ? (_document, Kids(_document)) : (parent.Dictionary, parent.Kids);
        var dictionary = NewElement(tag.Kind == TagKind.Heading ? Heading(tag) : NameOf(tag), above);
        kids.Elements.Add(dictionary.Reference!);
        Describe(dictionary, tag);
        var element = new Element(dictionary, Kids(dictionary));
        _elements.Add(tag, element);
        return element;
    }

    // No level is skipped on the way down.
    private string Heading(Tag tag)
    {
        _lastLevel = Math.Min(tag.Level, _lastLevel + 1);
        return FormattableString.Invariant($"H{_lastLevel}");
    }

    private void Describe(PdfDictionary dictionary, Tag tag)
    {
        switch (tag.Kind)
        {
            case TagKind.Figure:
                dictionary.Elements.SetString("/Alt", tag.Says);
                break;
            case TagKind.ColumnHead:
                dictionary.Elements["/A"] = Attributes("/Table", "/Scope", "/Column");
                break;
            case TagKind.List:
                dictionary.Elements["/A"] = Attributes("/List", "/ListNumbering", tag.Numbered ? "/Decimal" : "/Disc");
                break;
            case TagKind.ItemMarker or TagKind.Sign when tag.Says.Length > 0:
                dictionary.Elements.SetString("/ActualText", tag.Says);
                break;
            default:
                break;
        }
    }

    private PdfDictionary Attributes(string owner, string? key = null, string? value = null)
    {
        var attributes = new PdfDictionary(_file);
        attributes.Elements.SetName("/O", owner);
        if (key is not null)
        {
            attributes.Elements.SetName(key, value!);
        }

        return attributes;
    }

    private PdfDictionary NewElement(string name, PdfDictionary parent)
    {
        var element = Indirect(new PdfDictionary(_file));
        element.Elements.SetName("/Type", "/StructElem");
        element.Elements.SetName("/S", "/" + name);
        element.Elements["/P"] = parent.Reference;
        return element;
    }

    private PdfDictionary OnAnotherPage(PdfPage page, int number)
    {
        var content = new PdfDictionary(_file);
        content.Elements.SetName("/Type", "/MCR");
        content.Elements["/Pg"] = page.Reference;
        content.Elements.SetInteger("/MCID", number);
        return content;
    }

    private PdfArray ParentsOn(PdfPage page)
    {
        if (!_parents.TryGetValue(page, out var parents))
        {
            _parents.Add(page, parents = new PdfArray(_file));
        }

        return parents;
    }

    private PdfArray Kids(PdfDictionary element)
    {
        if (element.Elements["/K"] is not PdfArray kids)
        {
            element.Elements["/K"] = kids = new PdfArray(_file);
        }

        return kids;
    }

    private T Indirect<T>(T made)
        where T : PdfObject
    {
        _file.Internals.AddObject(made);
        return made;
    }

    private sealed class Element(PdfDictionary dictionary, PdfArray kids)
    {
        public PdfDictionary Dictionary => dictionary;

        public PdfArray Kids => kids;

        public PdfPage? Page { get; set; }
    }
}
