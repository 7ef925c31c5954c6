namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>What white and black are in each plane of a JPEG.</summary>
/// <param name="White">Sample of white in each plane, 0 to 255.</param>
/// <param name="Black">Sample of black in each plane, 0 to 255.</param>
internal sealed record JpegInk(byte[] White, byte[] Black)
{
    private const byte App14 = 0xEE;

    /// <summary>Reads the colour model from the segments before the frame, as decoders do.</summary>
    /// <param name="frame">The picture.</param>
    /// <param name="header">Segments that come before its first scan.</param>
    public static JpegInk Of(JpegFrame frame, IEnumerable<JpegSegment> header)
    {
        var all = header.ToList();
        var marked = all.Find(segment => segment.Marker == App14 && segment.Data.AsSpan().StartsWith("Adobe"u8) && segment.Data.Length >= 12).Data;
        int? transform = marked is null ? null : marked[11];
        return frame.Components.Count switch
        {
            1 => new JpegInk([255], [0]),
            3 when IsRgb(frame, transform, all) => new JpegInk([255, 255, 255], [0, 0, 0]),
            3 => new JpegInk([255, 128, 128], [0, 128, 128]),
            4 => FourInks(transform),
            _ => throw new NotSupportedException("A JPEG of two planes cannot be copied: it does not say which colours they are."),
        };
    }

    /// <summary>Brightness [1], 0 to 255, of what has given means in each plane.</summary>
    public double Brightness(IReadOnlyList<double> means)
    {
        if (White.Length != 4)
        {
            // Of three colours the middle one is green, which the eye mostly goes by.
            return White.Length == 3 && White[1] == 255 ? means[1] : means[0];
        }

        var colour = Black[0] == White[0] && White[1] == 128 ? 255 - means[0] : White[0] == 255 ? means.Take(3).Average() : 255 - means.Take(3).Average();
        return colour * (White[3] == 255 ? means[3] : 255 - means[3]) / 255;
    }

    private static bool IsRgb(JpegFrame frame, int? transform, List<JpegSegment> header) =>
        !header.Exists(segment => segment.Marker == JpegSegment.App0 && segment.Data.AsSpan().StartsWith("JFIF\0"u8))
        && (transform == 0 || (transform is null && frame.Components is [{ Id: (byte)'R' }, { Id: (byte)'G' }, { Id: (byte)'B' }]));

    // Marked files hold what the inks leave of the light, others the inks themselves. Through brightness and colour, no ink is turned about once more.
    private static JpegInk FourInks(int? transform) => transform switch
    {
        null => new JpegInk([0, 0, 0, 0], [0, 0, 0, 255]),
        2 => new JpegInk([0, 128, 128, 255], [0, 128, 128, 0]),
        _ => new JpegInk([255, 255, 255, 255], [255, 255, 255, 0]),
    };
}
