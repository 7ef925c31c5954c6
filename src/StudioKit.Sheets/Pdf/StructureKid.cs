using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;

namespace StudioKit.Sheets.Pdf;

/// <summary>What an element of a structure tree holds: another element, what may be clicked, or a stretch of a page's content.</summary>
internal readonly struct StructureKid
{
    /// <summary>The element that it is.</summary>
    public StructureElement? Part { get; init; }

    /// <summary>What may be clicked.</summary>
    public PdfAnnotation? Link { get; init; }

    /// <summary>The page of what may be clicked, or of the stretch.</summary>
    public PdfPage? Page { get; init; }

    /// <summary>Number of the stretch on its page.</summary>
    public int Number { get; init; }

    /// <summary>Writes it as a part of an element.</summary>
    public void Write(AddedObjects objects, StructureElement whole)
    {
        if (Part is not null)
        {
            objects.AddReference(Part.Number);
        }
        else if (Link is not null)
        {
            objects.Add("<</Type/OBJR/Obj ").AddReference(Link.Reference!.ObjectNumber).Add("/Pg ").AddReference(Page!.Reference!.ObjectNumber).Add(">>");
        }
        else if (Page == whole.Page)
        {
            objects.Add(Number).Add(" ");
        }
        else
        {
            objects.Add("<</Type/MCR/Pg ").AddReference(Page!.Reference!.ObjectNumber).Add("/MCID ").Add(Number).Add(">>");
        }
    }
}
