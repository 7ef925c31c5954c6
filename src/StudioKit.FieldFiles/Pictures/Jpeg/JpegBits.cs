namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>Writes segments and the bits of a scan.</summary>
internal sealed class JpegBits(Stream stream)
{
    private readonly byte[] _buffer = new byte[1 << 16];
    private int _filled;
    private ulong _bits;
    private int _count;

    public void Marker(byte marker)
    {
        Put(0xFF);
        Put(marker);
    }

    public void Segment(byte marker, ReadOnlySpan<byte> data)
    {
        Marker(marker);
        Put((byte)((data.Length + 2) >> 8));
        Put((byte)(data.Length + 2));
        foreach (var value in data)
        {
            Put(value);
        }
    }

    public void Write(int value, int bits)
    {
        _bits = (_bits << bits) | (uint)(value & ((1 << bits) - 1));
        for (_count += bits; _count >= 8; _count -= 8)
        {
            var whole = (byte)(_bits >> (_count - 8));
            Put(whole);
            if (whole == 0xFF)
            {
                Put(0);
            }
        }
    }

    /// <summary>Fills the last byte of a scan with ones.</summary>
    public void Align()
    {
        if (_count > 0)
        {
            Write(0x7F, 8 - _count);
        }
    }

    public void Flush()
    {
        stream.Write(_buffer, 0, _filled);
        _filled = 0;
    }

    private void Put(byte value)
    {
        if (_filled == _buffer.Length)
        {
            Flush();
        }

        _buffer[_filled++] = value;
    }
}
