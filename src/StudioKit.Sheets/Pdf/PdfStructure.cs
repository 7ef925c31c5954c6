using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Pdf;

/// <summary>The structure tree of a file (ISO 32000-1, 14.7): headings, paragraphs, lists, tables and figures in the order in which they are read.</summary>
/// <remarks>
/// It is kept and written by us: a book has a hundred elements on each page, and as PDFsharp's objects they took more time and memory than all that is drawn.
/// PDFsharp's file only holds the place of its root.
/// </remarks>
internal sealed class PdfStructure
{
    private const double PointsPerMillimetre = 72 / 25.4;

    private readonly List<StructureElement> _elements = [new("Document", null)];
    private readonly Dictionary<Tag, StructureElement> _byTag = new(ReferenceEqualityComparer.Instance);
    private readonly List<(PdfPage Page, List<StructureElement> Parents)> _pages = [];
    private readonly List<StructureElement> _links = [];
    private readonly PdfDictionary _root;
    private int _lastLevel;

    public PdfStructure(PdfDocument file)
    {
        _root = new PdfDictionary(file);
        _root.Elements.SetName("/Type", "/StructTreeRoot");
        file.Internals.AddObject(_root);
        file.Internals.Catalog.Elements["/StructTreeRoot"] = _root.Reference;
        var marked = new PdfDictionary(file);
        marked.Elements.SetBoolean("/Marked", true);
        file.Internals.Catalog.Elements["/MarkInfo"] = marked;
    }

    /// <summary>Number of the object whose place the root takes; known once PDFsharp has saved the file.</summary>
    public int RootNumber => _root.Reference!.ObjectNumber;

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

    /// <summary>Goes on to the next page.</summary>
    public void Begin(PdfPage page)
    {
        page.Elements.SetName("/Tabs", "/S");
        page.Elements.SetInteger("/StructParents", _pages.Count);
        _pages.Add((page, []));
    }

    /// <summary>Adds a stretch of the page's content to its element.</summary>
    /// <returns>Its number on the page.</returns>
    public int Add(Tag tag)
    {
        var (page, parents) = _pages[^1];
        var element = Of(tag);
        parents.Add(element);
        element.Page ??= page;
        element.Kids.Add(new StructureKid { Number = parents.Count - 1, Page = page });
        return parents.Count - 1;
    }

    /// <summary>Says where on its page a figure stands.</summary>
    public void Place(Tag figure, Bounds covered, double pageHeight) => _byTag[figure].Attributes += FormattableString.Invariant(
        $"/A<</O/Layout/Placement/Block/BBox[{Points(covered.Left)} {Points(pageHeight - covered.Bottom)} {Points(covered.Right)} {Points(pageHeight - covered.Top)}]>>");

    /// <summary>Ties what may be clicked to the text that it lies over; after the last page.</summary>
    public void Tie(PdfAnnotation annotation, PdfPage page, Tag link)
    {
        var element = Of(link);
        element.Kids.Add(new StructureKid { Link = annotation, Page = page });
        annotation.Elements.SetInteger("/StructParent", _pages.Count + _links.Count);
        _links.Add(element);
    }

    /// <summary>Writes all of it behind the objects of a file that PDFsharp has saved.</summary>
    /// <param name="objects">Where it is written.</param>
    /// <returns>The root, which takes its place among PDFsharp's objects.</returns>
    public string Write(AddedObjects objects)
    {
        var first = objects.NextNumber;
        for (var i = 0; i < _elements.Count; i++)
        {
            _elements[i].Number = first + i;
        }

        foreach (var element in _elements)
        {
            element.Write(objects, RootNumber);
        }

        var tree = WriteParents(objects);
        return FormattableString.Invariant(
            $"<</Type/StructTreeRoot/K[{first} 0 R]/ParentTree {tree} 0 R/ParentTreeNextKey {_pages.Count + _links.Count}>>");
    }

    /// <summary>Writes what leads from each page's content back to its elements.</summary>
    private int WriteParents(AddedObjects objects)
    {
        var firstOfPages = objects.NextNumber;
        foreach (var (_, parents) in _pages)
        {
            objects.Begin().Add("[");
            foreach (var element in parents)
            {
                objects.AddReference(element.Number);
            }

            objects.Add("]").End();
        }

        var tree = objects.NextNumber;
        objects.Begin().Add("<</Nums[");
        for (var i = 0; i < _pages.Count; i++)
        {
            objects.Add(i).Add(" ").AddReference(firstOfPages + i);
        }

        for (var i = 0; i < _links.Count; i++)
        {
            objects.Add(_pages.Count + i).Add(" ").AddReference(_links[i].Number);
        }

        objects.Add("]>>").End();
        return tree;
    }

    private static double Points(double millimetres) => Math.Round(millimetres * PointsPerMillimetre, 2);

    private StructureElement Of(Tag tag)
    {
        if (_byTag.TryGetValue(tag, out var known))
        {
            return known;
        }

        // A part stands in its place among the others, so it is made with the whole that it belongs to.
        var parent = tag.Parent is { } above ? Of(above) : _elements[0];
        if (_byTag.TryGetValue(tag, out known))
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

    private StructureElement New(Tag tag, StructureElement parent)
    {
        var element = new StructureElement(tag.Kind == TagKind.Heading ? Heading(tag) : NameOf(tag), parent) { Attributes = AttributesOf(tag) };
        parent.Kids.Add(new StructureKid { Part = element });
        _elements.Add(element);
        _byTag.Add(tag, element);
        return element;
    }

    // No level is skipped on the way down.
    private string Heading(Tag tag)
    {
        _lastLevel = Math.Min(tag.Level, _lastLevel + 1);
        return FormattableString.Invariant($"H{_lastLevel}");
    }

    private static string AttributesOf(Tag tag) => tag.Kind switch
    {
        TagKind.Figure => "/Alt" + AddedObjects.Text(tag.Says),
        TagKind.ColumnHead => "/A<</O/Table/Scope/Column>>",
        TagKind.List => $"/A<</O/List/ListNumbering/{(tag.Numbered ? "Decimal" : "Disc")}>>",
        TagKind.ItemMarker or TagKind.Sign when tag.Says.Length > 0 => "/ActualText" + AddedObjects.Text(tag.Says),
        _ => "",
    };
}
