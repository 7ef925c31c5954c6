using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Scale;

/// <summary>Which of what a picture says of itself goes into a copy of it: all that is still true.</summary>
internal static class MetadataSplice
{
    private static readonly string[] PngKept = ["iCCP", "sRGB", "gAMA", "cHRM", "cICP", "pHYs", "eXIf", "tEXt", "iTXt", "zTXt", "tIME", "sBIT", "bKGD", "mDCV", "cLLI"];

    /// <summary>What becomes of a segment of a JPEG: itself, another, or none.</summary>
    /// <param name="segment">The segment.</param>
    public static JpegSegment? Kept(JpegSegment segment) => segment.IsPreviewList ? null : segment;

    /// <summary>Whether a chunk of a PNG goes into the copy.</summary>
    /// <param name="type">Its four letters.</param>
    /// <remarks>Of those not known here only the ones whose last letter says that they hold whatever the pixels are (ISO/IEC 15948 clause 5.4).</remarks>
    public static bool IsKept(string type) => PngKept.Contains(type, StringComparer.Ordinal) || (char.IsLower(type[0]) && char.IsLower(type[3]));
}
