using StudioKit.Field.Pictures;

namespace StudioKit.Field.Analysis;

/// <summary>Reads a test frame: how much of its background is white, where it is not, and by how much.</summary>
public static class TestFrame
{
    /// <summary>Analyses a frame with a subject or the test object on the panel.</summary>
    /// <param name="picture">The frame's pixels.</param>
    /// <param name="kept">Tone curve that is known of the camera; the standard one serves where there is none, or where the frame names another camera.</param>
    /// <returns>The analysis, or why the picture breaks off.</returns>
    public static FieldResult<FrameAnalysis> Analyse(IRowSource picture, ToneCurve? kept = null) => Analyse(picture, kept, FrameSegmentation.Of);

    /// <summary>Analyses a frame of the bare panel: all of it is background.</summary>
    /// <inheritdoc cref="Analyse(IRowSource, ToneCurve)"/>
    public static FieldResult<FrameAnalysis> AnalyseBarePanel(IRowSource picture, ToneCurve? kept = null) => Analyse(picture, kept, FrameSegmentation.OfBareFrame);

    private static FieldResult<FrameAnalysis> Analyse(IRowSource picture, ToneCurve? kept, Func<BlockGrid, FrameSegmentation> segment)
    {
        ArgumentNullException.ThrowIfNull(picture);
        var curve = kept is not null && kept.IsFor(picture.Settings.Camera) ? kept : ToneCurve.Standard;
        var accumulator = new BlockAccumulator(picture.Width, picture.Height, picture.BrightnessStep, curve);
        if (picture.Read(accumulator.Visit) is { } broken)
        {
            return broken;
        }

        var grid = accumulator.Grid.Turned(picture.Settings.Orientation);
        var segmentation = segment(grid);
        return FrameSummary.Of(picture, grid, [.. segmentation.Areas], curve) with { Doubt = segmentation.Doubt, DoubtfulShare = segmentation.DoubtfulShare };
    }
}
