using StudioKit.Planning;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>Every kind of fitting with its pipes pushed in.</summary>
internal static class JointsSection
{
    public static IEnumerable<Block> Of(FramePlan frame, Measures measures)
    {
        if (frame.Geometry.Members.Count == 0)
        {
            yield break;
        }

        yield return new PageBreak();
        yield return new Heading("Joints", 2);
        yield return new Paragraph("Draw a line round each pipe end at the insertion mark; push home until the fitting's edge meets it. All joints are dry: solvent cement is not needed, and would keep the frame from packing.");
        var joints = frame.Fittings.Select(fitting => (Fitting: fitting, Labels: string.Join(", ", frame.Geometry.Joints.Where(joint => joint.Kind == fitting.Kind).Select(joint => joint.Label)))).ToList();
        foreach (var pair in joints.Chunk(2))
        {
            yield return new SideBySide([.. pair.Select(joint => ((Block)new Stack(
            [
                new Paragraph($"{joint.Fitting.Name}: {joint.Labels}", 9),
                new DrawingBlock(JointDrawing.Of(frame, joint.Fitting, measures), MaxHeight: 90, Caption: joint.Fitting.Kind == Physics.Structure.Frames.FittingKind.Corner ? $"{joint.Fitting.Name}: the third pipe comes towards you" : $"{joint.Fitting.Name}, pipes pushed in"),
            ]), 1.0))]);
        }
    }
}
