using StudioKit.Field;
using StudioKit.Field.Analysis;
using StudioKit.Field.Pictures;
using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Frames;

/// <summary>Analyses many frames at once.</summary>
public static class TestFrameBatch
{
    private static readonly FrameThumbnail NoThumbnail = new(0, 0, [], [], []);

    /// <summary>Works through all frames, as many at a time as there are processors.</summary>
    /// <param name="paths">Picture files.</param>
    /// <param name="areBare">Whether they show the bare panel.</param>
    /// <param name="areDrawn">Whether their pictures are wanted.</param>
    /// <param name="kept">Tone curve that is known of the camera; the standard one serves where there is none.</param>
    /// <returns>One result a frame, in the order given.</returns>
    public static async Task<IReadOnlyList<FieldResult<AnalysedFrame>>> AnalyseAsync(IReadOnlyList<string> paths, bool areBare, bool areDrawn, ToneCurve? kept = null)
    {
        ArgumentNullException.ThrowIfNull(paths);
        var results = new FieldResult<AnalysedFrame>[paths.Count];
        await Parallel.ForAsync(0, paths.Count, new ParallelOptions { MaxDegreeOfParallelism = RowsAtOnce.Pictures }, (i, _) =>
        {
            var frame = areBare ? TestFrameFile.AnalyseBarePanel(paths[i], kept) : TestFrameFile.Analyse(paths[i], kept);
            results[i] = frame.IsSound
                ? FieldResult<AnalysedFrame>.Sound(
                    new AnalysedFrame(frame.Value with { Thumbnail = NoThumbnail }, areDrawn ? HatchedFrameImage.Png(HatchedFrame.Of(frame.Value)) : null), frame.Diagnostics)
                : FieldResult<AnalysedFrame>.Refused(frame.Diagnostics);
            return ValueTask.CompletedTask;
        });
        return results;
    }
}
