using StudioKit.Field;
using StudioKit.Field.Analysis;
using StudioKit.Field.Pictures;
using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Frames;

/// <summary>Reads test frames from their files.</summary>
public static class TestFrameFile
{
    /// <summary>Analyses a frame with a subject or the test object on the panel.</summary>
    /// <param name="path">Picture file.</param>
    /// <param name="kept">Tone curve that is known of the camera; the standard one serves where there is none.</param>
    /// <returns>The analysis, or why the file cannot be read.</returns>
    public static FieldResult<FrameAnalysis> Analyse(string path, ToneCurve? kept = null) => FramePicture.With(path, picture => TestFrame.Analyse(picture, kept));

    /// <summary>Analyses a frame of the bare panel: all of it is background.</summary>
    /// <inheritdoc cref="Analyse"/>
    public static FieldResult<FrameAnalysis> AnalyseBarePanel(string path, ToneCurve? kept = null) => FramePicture.With(path, picture => TestFrame.AnalyseBarePanel(picture, kept));
}
