using PdfSharp.Pdf;

namespace StudioKit.Sheets.Pdf;

/// <summary>One element of a structure tree.</summary>
/// <param name="name">Its structure type.</param>
/// <param name="parent">What it is part of; none for the document itself.</param>
internal sealed class StructureElement(string name, StructureElement? parent)
{
    /// <summary>What it holds, in the order in which it is read.</summary>
    public List<StructureKid> Kids { get; } = new(1);

    /// <summary>The page on which its content begins.</summary>
    public PdfPage? Page { get; set; }

    /// <summary>Further keys as they stand in the file.</summary>
    public string Attributes { get; set; } = "";

    /// <summary>Number of its object, once all of them are known.</summary>
    public int Number { get; set; }

    /// <summary>Writes it.</summary>
    /// <param name="objects">Where it is written.</param>
    /// <param name="root">Number of the tree's root.</param>
    public void Write(AddedObjects objects, int root)
    {
        objects.Begin().Add("<</Type/StructElem/S/").Add(name).Add("/P ").AddReference(parent?.Number ?? root).Add(Attributes);
        if (Page is not null)
        {
            objects.Add("/Pg ").AddReference(Page.Reference!.ObjectNumber);
        }

        objects.Add("/K[");
        foreach (var kid in Kids)
        {
            kid.Write(objects, this);
        }

        objects.Add("]>>").End();
    }
}
