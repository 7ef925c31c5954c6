namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>A Huffman table (ISO/IEC 10918-1 annex C), to read and to write with.</summary>
internal sealed class HuffmanTable
{
    private const int QuickBits = 10;
    private readonly ushort[] _quick = new ushort[1 << QuickBits];
    private readonly int[] _firstCode = new int[17];
    private readonly int[] _firstPlace = new int[17];
    private readonly byte[] _counts;
    private readonly byte[] _symbols;
    private readonly (int Code, int Length)[] _codes = new (int, int)[256];

    /// <summary>Makes a table from how many codes there are of each length and the symbols in order of their codes.</summary>
    /// <exception cref="InvalidDataException">There are more codes than fit.</exception>
    public HuffmanTable(ReadOnlySpan<byte> counts, ReadOnlySpan<byte> symbols)
    {
        (_counts, _symbols) = (counts.ToArray(), symbols.ToArray());
        var (code, place) = (0, 0);
        for (var length = 1; length <= 16; length++, code <<= 1)
        {
            (_firstCode[length], _firstPlace[length]) = (code, place);
            for (var i = 0; i < _counts[length - 1]; i++, code++, place++)
            {
                if (code >= 1 << length)
                {
                    throw new InvalidDataException("A Huffman table holds more codes than there can be.");
                }

                Add(code, length, _symbols[place]);
            }
        }
    }

    /// <summary>How often each symbol was read.</summary>
    public long[] Uses { get; } = new long[256];

    /// <summary>Whether every symbol that eight-bit pictures can need has a code.</summary>
    public bool IsComplete(bool isFirst) => SymbolsNeeded(isFirst).All(symbol => _codes[symbol].Length > 0);

    /// <summary>Contents of a table segment, save its class and number.</summary>
    public IEnumerable<byte> Contents => [.. _counts, .. _symbols];

    /// <summary>Every symbol that eight-bit pictures can need: twelve categories of first coefficients, or all pairs of run and category.</summary>
    public static IEnumerable<byte> SymbolsNeeded(bool isFirst) => isFirst
        ? Enumerable.Range(0, 12).Select(category => (byte)category)
        : [0x00, 0xF0, .. from run in Enumerable.Range(0, 16) from category in Enumerable.Range(1, 10) select (byte)((run << 4) | category)];

    /// <summary>Reads the next symbol.</summary>
    /// <exception cref="InvalidDataException">The next bits are no code, or the data end.</exception>
    public byte Read(JpegBytes bytes)
    {
        var next = bytes.Peek();
        var quick = _quick[next >> (16 - QuickBits)];
        if (quick != 0)
        {
            bytes.Take(quick >> 8);
            return Used((byte)quick);
        }

        for (var length = QuickBits + 1; length <= 16; length++)
        {
            var offset = (next >> (16 - length)) - _firstCode[length];
            if (offset >= 0 && offset < _counts[length - 1])
            {
                bytes.Take(length);
                return Used(_symbols[_firstPlace[length] + offset]);
            }
        }

        throw new InvalidDataException("The picture's data hold a code that no table knows.");
    }

    /// <summary>Writes a symbol's code.</summary>
    /// <exception cref="InvalidDataException">The symbol has none.</exception>
    public void Write(JpegBits bits, byte symbol)
    {
        var (code, length) = _codes[symbol];
        if (length == 0)
        {
            throw new InvalidDataException("The picture's data hold a value that cannot be.");
        }

        bits.Write(code, length);
    }

    private byte Used(byte symbol)
    {
        Uses[symbol]++;
        return symbol;
    }

    private void Add(int code, int length, byte symbol)
    {
        _codes[symbol] = (code, length);
        if (length <= QuickBits)
        {
            var spare = QuickBits - length;
            _quick.AsSpan(code << spare, 1 << spare).Fill((ushort)((length << 8) | symbol));
        }
    }
}
