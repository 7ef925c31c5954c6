using StudioKit.Field.Pictures;
using StudioKit.Physics;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Scale;

/// <summary>From a scale that is known of the whole picture to that of a file, which may be a part of it or have been made smaller.</summary>
public static class PictureScaling
{
    // Programs that develop raw files leave a few rows and columns at the edges, or take a few more than the camera does.
    private const double SameSize = 0.01;

    // Sides of a picture that was made smaller are rounded to whole pixels; previews are trimmed a little more.
    private const double SameShape = 0.01;
    private const double SamePreviewShape = 0.03;
    private const double SameSensorShape = 0.03;

    // Above it a picture of a rule is well worth its trouble.
    private const double WellKnown = 0.03;

    /// <summary>Scale of a picture.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="reference">What is known of the whole picture.</param>
    /// <param name="making">How the file came from it, as told.</param>
    /// <returns>The scale; or why the file cannot be the whole picture and what would have to be told.</returns>
    /// <remarks>A crop leaves the size of a pixel at the subject as it is; making a picture k times smaller makes it k times larger.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The reference shows no field.</exception>
    [Source("Derived", "field over pixels")]
    public static FieldResult<PictureScale> Of(IRowSource picture, ScaleReference reference, PictureMaking making)
    {
        ArgumentNullException.ThrowIfNull(picture);
        ArgumentNullException.ThrowIfNull(reference);
        ArgumentNullException.ThrowIfNull(making);
        var file = new PixelDimensions(picture.Width, picture.Height);
        var before = making.ResizedFrom ?? (picture.Settings is { IsPreview: true, RecordedPixels: { Longer: > 0 } raw } ? raw : file);
        if (Shape(picture, file, before) is { } bent)
        {
            return bent;
        }

        var full = reference.FullPixels ?? picture.Settings.RecordedPixels;
        if (Fault(picture, before, full, making, reference) is { } fault)
        {
            return fault;
        }

        var size = Guard.Positive(reference.FieldWidth) / (full ?? before).Longer * before.Longer / file.Longer;
        return new PictureScale(size, reference.Basis)
        {
            RelativeUncertainty = reference.RelativeUncertainty,
            Making = making,
            Caveats = [.. Caveats(picture, reference, full)],
        };
    }

    private static FieldDiagnostic? Shape(IRowSource picture, PixelDimensions file, PixelDimensions before)
    {
        var (longer, shorter) = (file.Longer / (double)before.Longer, file.Shorter / (double)before.Shorter);
        var allowed = (picture.Settings.IsPreview ? SamePreviewShape : SameShape) + (1.0 / file.Shorter);
        return Math.Abs((longer / shorter) - 1) <= allowed ? null : new FieldDiagnostic(
            "FLD323", picture.Name, $"A picture of {before} pixels does not become one of {file} when it is resized: its sides would have another ratio.",
            "Give the pixels that it had after the crop and before it was resized.");
    }

    private static FieldDiagnostic? Fault(IRowSource picture, PixelDimensions before, PixelDimensions? full, PictureMaking making, ScaleReference reference)
    {
        if (full is not { } whole)
        {
            return making.IsCropped ? new FieldDiagnostic(
                "FLD322", picture.Name, "How large the crop is cannot be told: nothing says how many pixels the whole picture has.", "Give them, e.g. --camera-pixels \"8192 x 5464\".")
                : SensorShape(picture, before, reference);
        }

        if (making.IsCropped)
        {
            return before.Longer <= whole.Longer * (1 + SameSize) && before.Shorter <= whole.Shorter * (1 + SameSize) ? null : new FieldDiagnostic(
                "FLD322", picture.Name, $"A picture of {before} pixels is no part of one of {whole}.");
        }

        return IsSame(before, whole) ? null : new FieldDiagnostic(
            "FLD321", picture.Name,
            $"The picture has {before} pixels, but the whole one has {whole}: it was cropped or resized, and its scale depends on which.",
            $"Say --cropped where it was only cropped; --resized-from \"{whole}\" where it was only made smaller or larger; both where it was cropped first, with the pixels of the crop. Or photograph a rule and crop nothing.");
    }

    private static bool IsSame(PixelDimensions one, PixelDimensions other) =>
        Math.Abs((one.Longer / (double)other.Longer) - 1) <= SameSize && Math.Abs((one.Shorter / (double)other.Shorter) - 1) <= SameSize;

    // Where pixels tell nothing, the ratio of the sides still may.
    private static FieldDiagnostic? SensorShape(IRowSource picture, PixelDimensions before, ScaleReference reference)
    {
        var ratio = before.Longer / (double)before.Shorter;
        return reference.FieldHeight is not { } high || Math.Abs((ratio * high / reference.FieldWidth) - 1) <= SameSensorShape ? null : new FieldDiagnostic(
            "FLD321", picture.Name, $"The picture's sides, {before} pixels, have another ratio than the sensor's: it was cropped, and by how much is not known.",
            "Give the camera's pixels, e.g. --camera-pixels \"8192 x 5464\", and say --cropped.");
    }

    private static IEnumerable<string> Caveats(IRowSource picture, ScaleReference reference, PixelDimensions? full)
    {
        if (full is null)
        {
            yield return "Nothing tells how many pixels the camera gives, so the picture is taken for the whole one.";
        }

        if (picture.Settings.IsPreview)
        {
            yield return "The picture is the preview inside a raw file.";
        }

        if (reference.RelativeUncertainty > WellKnown)
        {
            yield return "Set by distance, the magnification is known poorly; a photographed rule tells it better.";
        }
    }
}
