using StudioKit.Field;
using StudioKit.Field.Ladders;

namespace StudioKit.FieldFiles.Frames;

/// <summary>The pictures of one power ladder, named by their powers.</summary>
public static class LadderFiles
{
    /// <summary>Reads the frames, as of the bare panel and by the standard curve, from which a ladder learns the camera's own.</summary>
    /// <param name="ladder">Name of the ladder, for whoever has to put it right.</param>
    /// <param name="pictures">Its picture files; their descriptions or names tell their powers.</param>
    /// <returns>The frames, or what is wrong with any of them.</returns>
    public static async Task<FieldResult<IReadOnlyList<LadderFrame>>> ReadAsync(string ladder, IReadOnlyList<string> pictures)
    {
        ArgumentNullException.ThrowIfNull(pictures);
        if (pictures.Count == 0)
        {
            return new FieldDiagnostic("FLD236", ladder, "There is no picture in it, so there is no ladder.", "JPEG, PNG and TIFF are read, named by their powers, e.g. panel-1-16.jpg.");
        }

        var frames = await TestFrameBatch.AnalyseAsync(pictures, areBare: true, areDrawn: false);
        return frames.Any(frame => !frame.IsSound)
            ? FieldResult<IReadOnlyList<LadderFrame>>.Refused([.. frames.SelectMany(frame => frame.Diagnostics)])
            : LadderPowers.OfNames([.. frames.Select(frame => frame.Value!.Analysis)]);
    }
}
