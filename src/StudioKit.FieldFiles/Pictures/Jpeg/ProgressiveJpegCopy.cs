using BitMiracle.LibJpeg.Classic;
using StudioKit.FieldFiles.Scale;

namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>Copies a progressive JPEG with all its coefficients in memory, as its scans can only be told apart together.</summary>
internal sealed class ProgressiveJpegCopy : IBarredCopy
{
    // The library keeps each block as an object with an array; together they take this much (64 coefficients of two bytes, and two heads).
    private const int BytesOfBlock = 184;
    // What a picture before has let go of may still be there, so that a run takes about three times this in the end.
    private const long MostBytes = 200_000_000;

    // Of pictures this large one at a time is in memory, however many are worked on.
    private const long LargeBytes = 40_000_000;
    private static readonly SemaphoreSlim Large = new(1);
    private readonly bool _isLarge;
    private readonly jpeg_decompress_struct _source;
    private readonly Stream _stream;
    private readonly jvirt_array<JBLOCK>[] _planes;
    private readonly List<JpegSegment> _header;
    private readonly Func<JpegSegment, JpegSegment?> _keep;
    private readonly JpegPlaneRegion[] _regions;

    private ProgressiveJpegCopy(Stream stream, JpegFrame frame, List<JpegSegment> header, StoredBox box, Func<JpegSegment, JpegSegment?> keep, bool isLarge)
    {
        (_stream, _header, _keep, _isLarge) = (stream, header, keep, isLarge);
        _source = new jpeg_decompress_struct(new StrictJpegErrors());
        _source.jpeg_stdio_src(stream);
        _source.jpeg_read_header(true);
        _planes = _source.jpeg_read_coefficients();
        var steps = new JpegSteps();
        header.Where(segment => segment.Marker == JpegSegment.QuantisationTables).ToList().ForEach(segment => steps.Read(segment.Data));
        _regions = [.. frame.Components.Select((component, plane) => Region(frame, component, box, steps, plane))];
    }

    public double Brightness => JpegInk.Of(_regions[0].Frame, _header).Brightness([.. _regions.Select(region => region.Mean)]);

    public IReadOnlyList<string> Changes =>
        ["Its scans follow each other in the usual order, whichever they had; what they hold is the same.", .. JpegSegment.LeftOut(_header)];

    /// <summary>Reads the picture.</summary>
    /// <param name="open">Opens it.</param>
    /// <param name="frame">The picture's size and planes.</param>
    /// <param name="header">Segments before its first scan.</param>
    /// <param name="box">Where the bar will lie.</param>
    /// <param name="keep">What becomes of a segment that tells of the picture: itself, another, or none.</param>
    /// <exception cref="InvalidDataException">The picture is damaged.</exception>
    /// <exception cref="NotSupportedException">It is of a kind that cannot be copied, or too large for memory.</exception>
    public static ProgressiveJpegCopy Open(Func<Stream> open, JpegFrame frame, List<JpegSegment> header, StoredBox box, Func<JpegSegment, JpegSegment?> keep)
    {
        var bytes = frame.Components.Sum(component => (long)frame.BlocksWide(component) * frame.BlocksHigh(component)) * BytesOfBlock;
        if (bytes > MostBytes)
        {
            throw new NotSupportedException(
                $"A progressive JPEG is copied with all of it in memory, and this one would take {bytes / 1_000_000} MB of it, more than {MostBytes / 1_000_000}. Save it as a baseline JPEG first.");
        }

        var isLarge = bytes > LargeBytes;
        var stream = open();
        if (isLarge)
        {
            Large.Wait();
        }

        try
        {
            return Damage.Told(() => new ProgressiveJpegCopy(stream, frame, header, box, keep, isLarge));
        }
        catch
        {
            stream.Dispose();
            LetGo(isLarge);
            throw;
        }
    }

    public void Write(BarStamp stamp, Stream target)
    {
        var ink = JpegInk.Of(_regions[0].Frame, _header);
        for (var plane = 0; plane < _regions.Length; plane++)
        {
            _regions[plane].Stamp(stamp, ink.White[plane], ink.Black[plane]);
            GiveBack(_regions[plane], _planes[plane]);
        }

        using var encoded = new MemoryStream();
        Damage.Told(() => Encode(encoded));
        encoded.Position = 0;
        WriteWithHeader(encoded, target);
    }

    public void Dispose()
    {
        _source.jpeg_destroy();
        _stream.Dispose();
        LetGo(_isLarge);
    }

    private static void LetGo(bool isLarge)
    {
        if (isLarge)
        {
            Large.Release();
        }
    }

    private static void GiveBack(JpegPlaneRegion region, jvirt_array<JBLOCK> plane)
    {
        foreach (var (column, row) in region.Places.Where(place => region.IsChanged(place.Column, place.Row)))
        {
            var block = plane.Access(row, 1)[0][column];
            var coefficients = region.Block(column, row);
            for (var i = 0; i < 64; i++)
            {
                block[BlockTransform.Places[i]] = coefficients[i];
            }
        }
    }

    private JpegPlaneRegion Region(JpegFrame frame, JpegComponent component, StoredBox box, JpegSteps steps, int plane)
    {
        var region = new JpegPlaneRegion(frame, component, box) { Steps = steps[component.Table] };
        foreach (var (column, row) in region.Places)
        {
            var block = _planes[plane].Access(row, 1)[0][column];
            var coefficients = region.Take(column, row);
            for (var i = 0; i < 64; i++)
            {
                coefficients[i] = block[BlockTransform.Places[i]];
            }
        }

        return region;
    }

    private void Encode(MemoryStream encoded)
    {
        var target = new jpeg_compress_struct(new StrictJpegErrors());
        target.jpeg_stdio_dest(encoded);
        _source.jpeg_copy_critical_parameters(target);
        target.jpeg_simple_progression();
        target.jpeg_write_coefficients(_planes);
        target.jpeg_finish_compress();
    }

    // What the original says of itself stands in the place of what the library says.
    private void WriteWithHeader(MemoryStream encoded, Stream target)
    {
        var bits = new JpegBits(target);
        bits.Marker(JpegSegment.StartOfImage);
        foreach (var segment in _header.Where(segment => segment.IsAbout).Select(_keep).OfType<JpegSegment>())
        {
            bits.Segment(segment.Marker, segment.Data);
        }

        foreach (var segment in JpegSegment.ReadHeader(encoded).Where(segment => !segment.IsAbout))
        {
            bits.Segment(segment.Marker, segment.Data);
        }

        bits.Marker(JpegSegment.StartOfScan);
        bits.Flush();
        encoded.CopyTo(target);
    }
}
