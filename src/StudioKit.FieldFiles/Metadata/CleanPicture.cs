using StudioKit.Field;

namespace StudioKit.FieldFiles.Metadata;

/// <summary>
/// Copies of pictures without anything that tells where they were taken and by whom: coordinates, serial numbers, names, makers' blocks, small
/// pictures, captions, dates and every other text.
/// </summary>
/// <remarks>
/// It goes by what may stay: the coded picture, byte for byte, its colour profile, orientation, resolution and the numbers of its exposure. A
/// colour profile may name the screen or camera that it was made for; what the picture itself shows, no program can take out.
/// </remarks>
public static class CleanPicture
{
    /// <summary>Copies a picture: JPEG, PNG or TIFF, told apart by their first bytes.</summary>
    /// <param name="source">The picture, which can seek.</param>
    /// <param name="name">Name to report faults under.</param>
    /// <param name="target">Where the copy goes.</param>
    /// <returns>None, or why there is no copy; what was written until then is not to be used.</returns>
    public static FieldDiagnostic? Copy(Stream source, string name, Stream target)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(target);
        return Clean(source, target) is null
            ? new FieldDiagnostic(
                "FLD371", name, "What the file says of itself cannot be taken out: it is damaged, or no JPEG, PNG or TIFF of the usual kind.",
                "Save it as a JPEG or PNG, and clean that.")
            : null;
    }

    /// <summary>What a picture file says beside the picture.</summary>
    /// <param name="path">The file.</param>
    /// <returns>What <see cref="Copy"/> would take out, as far as the file's head tells; none where it cannot be read.</returns>
    public static TellingMetadata Look(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        try
        {
            using var source = File.OpenRead(path);
            return Clean(source, null) ?? TellingMetadata.None;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return TellingMetadata.None;
        }
    }

    private static TellingMetadata? Clean(Stream source, Stream? target)
    {
        source.Position = 0;
        return source.ReadByte() switch
        {
            0xFF => CleanJpeg.Copy(source, target),
            0x89 => CleanPng.Copy(source, target),
            'I' or 'M' => Tiff(source, target),
            _ => null,
        };
    }

    private static TellingMetadata? Tiff(Stream source, Stream? target)
    {
        var clean = CleanTiff.OfPicture(source);
        if (target is not null)
        {
            clean?.Write(target);
        }

        return clean?.Found;
    }
}
