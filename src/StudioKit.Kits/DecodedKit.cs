using System.Text;
using StudioKit.Kits.Text;

namespace StudioKit.Kits;

/// <summary>A file's bytes taken for the text of a kit, before anything of it is understood.</summary>
/// <param name="Text">The text with the line ends that it has; none where the bytes cannot be a kit's.</param>
/// <param name="Problem">Why they cannot; none where they can.</param>
public sealed record DecodedKit(string? Text, Diagnostic? Problem)
{
    /// <summary>Reads a file, but no more of it than a kit may have.</summary>
    /// <param name="path">Path of the file.</param>
    /// <exception cref="IOException">The file does not exist or cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read.</exception>
    public static DecodedKit Read(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        return Decode(KitFile.ReadBounded(path, KitLimits.Bytes), path);
    }

    /// <summary>Reads what comes in as a stream, but no more of it than a kit may have.</summary>
    /// <param name="stream">The stream.</param>
    /// <param name="name">Name that the diagnostic gives it.</param>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    public static DecodedKit Read(Stream stream, string name)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return Decode(KitFile.ReadBounded(stream, KitLimits.Bytes), name);
    }

    /// <summary>Takes a file's bytes for text, by the limits and rules of the reader.</summary>
    /// <param name="bytes">The bytes; of a file that is too large more than the reader takes, not all.</param>
    /// <param name="fileName">Name that the diagnostic gives the file.</param>
    public static DecodedKit Decode(byte[] bytes, string fileName)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentException.ThrowIfNullOrEmpty(fileName);

        var diagnostics = new DiagnosticList(fileName);
        return TextDecoder.Decode(bytes, fileName, KitLimits.Bytes, diagnostics) is null
            ? new DecodedKit(null, diagnostics.InOrder()[0])
            : new DecodedKit(Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF'), null);
    }
}
