using StudioKit.Planning;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>Every kind of fitting with its pipes pushed in.</summary>
internal static class JointsSection
{
    public static IEnumerable<Block> Of(FramePlan frame, PageSetup page)
    {
        if (frame.Geometry.Members.Count == 0)
        {
            yield break;
        }

        yield return new Heading("Joints", 2);
        yield return new Paragraph("Take-off runs from the middle of a fitting to the bottom of its socket; a dry push stops short of that by the gap. Draw a line round each pipe end at the insertion mark and push home until the fitting's edge meets it. All joints are dry: solvent cement is not needed, and would keep the frame from packing. In a corner the third pipe comes towards you.");
        var (rows, reduction) = JointsDrawing.Of(frame, page.Body.Width);
        foreach (var row in rows)
        {
            yield return new DrawingBlock(row, TrueScale: true, Caption: "");
        }

        yield return new Paragraph(FormattableString.Invariant($"All joints are drawn at one scale, 1:{reduction}."), TypeScale.Small);
    }
}
