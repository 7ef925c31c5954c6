using System.Text;
using StudioKit.Kits.Text;

namespace StudioKit.Kits;

/// <summary>A file's bytes taken for the text of a kit, before anything of it is understood.</summary>
/// <param name="Text">The text with the line ends that it has; none where the bytes cannot be a kit's.</param>
/// <param name="Problem">Why they cannot; none where they can.</param>
public sealed record DecodedKit(string? Text, Diagnostic? Problem)
{
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
