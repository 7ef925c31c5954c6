namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>Rows of a PNG from top to bottom.</summary>
/// <remarks>
/// Interlaced pictures are unpacked by several readers at once, one for each pass, so that no pass is ever held: the later half of the data is read once, the earlier parts a few
/// times, twice the work in all.
/// </remarks>
internal sealed class PngRows : IRowDecoder
{
    private readonly PngHeader _header;
    private readonly PngColours _colours;
    private readonly List<(PngPass Pass, PngPassRows Rows)> _passes = [];
    private readonly PngFile _file;
    private int _next;
    private bool _isBroken;

    public PngRows(PngFile file) => (_file, _header, _colours) = (file, file.Header, new PngColours(file));

    public int Width => _header.Width;

    public int Height => _header.Height;

    public int Read(byte[] rgba, int rows)
    {
        var done = 0;
        try
        {
            Open();
            for (; done < rows && _next < Height && !_isBroken; done++, _next++)
            {
                ReadRow(rgba.AsSpan(done * Width * 4, Width * 4));
            }
        }
        catch (Exception error) when (error is InvalidDataException or EndOfStreamException)
        {
            _isBroken = true;
        }

        return done;
    }

    public void Dispose() => _passes.ForEach(pass => pass.Rows.Dispose());

    private void Open()
    {
        if (_passes.Count > 0)
        {
            return;
        }

        List<PngPass> passes = [.. _header.Passes];
        for (var i = 0; i < passes.Count; i++)
        {
            var rows = _file.Rows();
            _passes.Add((passes[i], rows));
            passes.Take(i).ToList().ForEach(rows.Skip);
            rows.Begin(passes[i]);
        }
    }

    private void ReadRow(Span<byte> rgba)
    {
        foreach (var (pass, rows) in _passes)
        {
            if (pass.HasRow(_next))
            {
                rows.Read();
                _colours.Spread(rows.Row, pass, rgba);
            }
        }
    }
}
