using StudioKit.Planning;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>What stops a frame being built or packed, or a flash hanging on it, as a warning.</summary>
internal static class FrameProblems
{
    public static IEnumerable<Block> Of(FramePlan frame)
    {
        if (frame.Geometry.Problems.Count > 0)
        {
            yield return new Caution(
                string.Join(' ', frame.Geometry.Problems),
                frame.Geometry.GoesTogether ? "This frame does not carry every flash" : "This frame can't be built as it is");
        }
    }
}
