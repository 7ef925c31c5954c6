using StudioKit.Field.Pictures;

namespace StudioKit.Field.Analysis;

/// <summary>Reads a test frame: how much of its background is white, where it is not, and by how much.</summary>
public static class TestFrame
{
    /// <summary>Analyses a frame with a subject or the test object on the panel.</summary>
    /// <param name="path">Picture file.</param>
    /// <returns>The analysis, or why the file cannot be read.</returns>
    public static FieldResult<FrameAnalysis> Analyse(string path) => Analyse(path, FrameSegmentation.Of);

    /// <summary>Analyses a frame of the bare panel: all of it is background.</summary>
    /// <inheritdoc cref="Analyse(string)"/>
    public static FieldResult<FrameAnalysis> AnalyseBarePanel(string path) => Analyse(path, FrameSegmentation.OfBareFrame);

    private static FieldResult<FrameAnalysis> Analyse(string path, Func<BlockGrid, FrameSegmentation> segment)
    {
        var opened = FramePicture.Open(path);
        if (!opened.IsSound)
        {
            return FieldResult<FrameAnalysis>.Refused(opened.Diagnostics);
        }

        using var picture = opened.Value;
        var accumulator = new BlockAccumulator(picture.Width, picture.Height, picture.BrightnessStep);
        if (picture.Read(accumulator.Visit) is { } broken)
        {
            return broken;
        }

        var grid = accumulator.Grid.Turned(picture.Settings.Orientation);
        var segmentation = segment(grid);
        return FrameSummary.Of(picture, grid, [.. segmentation.Areas]) with { Doubt = segmentation.Doubt };
    }
}
