namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>Reads a JPEG byte by byte and, inside a scan, bit by bit (ISO/IEC 10918-1 annexes B and F).</summary>
internal sealed class JpegBytes(Stream stream)
{
    private const int BufferSize = 1 << 16;
    private readonly byte[] _buffer = new byte[BufferSize];
    private int _at;
    private int _end;
    private ulong _bits;
    private int _count;
    private int _invented;
    private int _marker = -1;

    /// <summary>Next byte of a segment.</summary>
    /// <exception cref="InvalidDataException">The file ends here.</exception>
    public byte Byte() => Next() is var next and >= 0 ? (byte)next : throw CutShort();

    /// <summary>Contents of the segment whose marker was read last.</summary>
    /// <exception cref="InvalidDataException">The file ends inside it.</exception>
    public byte[] Segment()
    {
        var length = (Byte() << 8) | Byte();
        if (length < 2)
        {
            throw new InvalidDataException("A segment is shorter than its own length field.");
        }

        var data = new byte[length - 2];
        for (var i = 0; i < data.Length; i++)
        {
            data[i] = Byte();
        }

        return data;
    }

    /// <summary>Second byte of the next marker; what lies before it is passed over.</summary>
    /// <exception cref="InvalidDataException">The file ends before one.</exception>
    public byte Marker()
    {
        (_bits, _count, _invented) = (0, 0, 0);
        if (_marker >= 0)
        {
            var found = (byte)_marker;
            _marker = -1;
            return found;
        }

        while (true)
        {
            while (Byte() != 0xFF)
            {
            }

            byte next;
            do
            {
                next = Byte();
            }
            while (next == 0xFF);

            if (next != 0)
            {
                return next;
            }
        }
    }

    /// <summary>The next sixteen bits of the scan, without taking them.</summary>
    public int Peek()
    {
        Fill();
        return (int)(_bits >> (_count - 16)) & 0xFFFF;
    }

    /// <summary>Takes bits that were looked at.</summary>
    /// <exception cref="InvalidDataException">The scan ends before them.</exception>
    public void Take(int bits)
    {
        _count -= bits;
        if (_count < _invented)
        {
            throw CutShort();
        }
    }

    /// <summary>Takes the next bits of the scan, up to sixteen.</summary>
    /// <exception cref="InvalidDataException">The scan ends before them.</exception>
    public int Bits(int bits)
    {
        var value = bits == 0 ? 0 : Peek() >> (16 - bits);
        Take(bits);
        return value;
    }

    private static InvalidDataException CutShort() => new("The picture's data end too early.");

    private void Fill()
    {
        while (_count <= 48)
        {
            var next = DataByte();
            if (next < 0)
            {
                _invented += 8;
            }

            _bits = (_bits << 8) | (byte)Math.Max(next, 0);
            _count += 8;
        }
    }

    // A byte of 255 in the data is followed by a zero; anything else after it is a marker, which ends them.
    private int DataByte()
    {
        if (_marker >= 0)
        {
            return -1;
        }

        var next = Next();
        if (next != 0xFF)
        {
            return next;
        }

        int second;
        do
        {
            second = Next();
        }
        while (second == 0xFF);

        if (second == 0)
        {
            return 0xFF;
        }

        _marker = second;
        return -1;
    }

    private int Next()
    {
        if (_at == _end)
        {
            (_at, _end) = (0, stream.Read(_buffer, 0, _buffer.Length));
            if (_end == 0)
            {
                return -1;
            }
        }

        return _buffer[_at++];
    }
}
