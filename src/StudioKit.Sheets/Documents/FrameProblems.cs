using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>What stops a frame being built or packed, or a flash hanging on it, as a warning.</summary>
internal static class FrameProblems
{
    public static IEnumerable<Block> Of(FramePlan frame)
    {
        string[] sentences =
        [
            .. frame.Geometry.Problems.Select(FrameText.Of),
            .. frame.LowerFlashes.Where(flash => flash.Support == FlashSupport.OwnStand || flash.Moves.Count > 0).Select(CradleText.Sentence),
        ];
        if (sentences.Length > 0)
        {
            yield return new Caution(
                string.Join(' ', sentences),
                frame.Geometry.GoesTogether ? "This frame does not carry every flash" : "This frame can't be built as it is");
        }
    }
}
