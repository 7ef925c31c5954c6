using StudioKit.Field;
using StudioKit.Field.Analysis;
using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Frames;

/// <summary>Reads test frames from their files.</summary>
public static class TestFrameFile
{
    /// <summary>Analyses a frame with a subject or the test object on the panel.</summary>
    /// <param name="path">Picture file.</param>
    /// <returns>The analysis, or why the file cannot be read.</returns>
    public static FieldResult<FrameAnalysis> Analyse(string path) => FramePicture.With(path, TestFrame.Analyse);

    /// <summary>Analyses a frame of the bare panel: all of it is background.</summary>
    /// <inheritdoc cref="Analyse"/>
    public static FieldResult<FrameAnalysis> AnalyseBarePanel(string path) => FramePicture.With(path, TestFrame.AnalyseBarePanel);
}
