namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>Rows of a PNG pass after pass, as their bytes are.</summary>
/// <remarks>Each row is good until the next is read.</remarks>
internal sealed class PngPassRows(PngHeader header, Stream unpacked) : IDisposable
{
    private byte[] _row = [];
    private byte[] _above = [];
    private byte[] _coded = [];

    /// <summary>Filter of the row read last.</summary>
    public byte Filter { get; private set; }

    /// <summary>The row read last as the file codes it, behind its filter.</summary>
    public ReadOnlySpan<byte> Coded => _coded;

    /// <summary>The row read last.</summary>
    public Span<byte> Row => _row;

    /// <summary>The row above it as it was read; zeros for the first of a pass.</summary>
    public ReadOnlySpan<byte> Above => _above;

    /// <summary>Makes ready for the first row of a pass.</summary>
    public void Begin(PngPass pass)
    {
        var bytes = header.RowBytes(pass.Columns(header.Width));
        (_row, _above, _coded) = (new byte[bytes], new byte[bytes], new byte[bytes]);
    }

    /// <summary>Reads the next row.</summary>
    /// <exception cref="InvalidDataException">The data are damaged.</exception>
    /// <exception cref="EndOfStreamException">The data end inside it.</exception>
    public void Read()
    {
        (_row, _above) = (_above, _row);
        var filter = unpacked.ReadByte();
        Filter = filter < 0 ? throw new EndOfStreamException() : (byte)filter;
        unpacked.ReadExactly(_row);
        _row.CopyTo(_coded, 0);
        PngFilter.TakeOff(Filter, _row, _above, header.Step);
    }

    /// <summary>Passes over a whole pass.</summary>
    public void Skip(PngPass pass)
    {
        var row = new byte[1 + header.RowBytes(pass.Columns(header.Width))];
        for (var rows = pass.Rows(header.Height); rows > 0; rows--)
        {
            unpacked.ReadExactly(row);
        }
    }

    public void Dispose() => unpacked.Dispose();
}
