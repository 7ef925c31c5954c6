namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>One block as it is coded in a sequential scan: the difference of its first coefficient, then runs and values.</summary>
internal sealed class JpegBlock
{
    private const byte EndOfBlock = 0x00;
    private const byte SixteenZeros = 0xF0;
    private readonly byte[] _symbols = new byte[64];
    private readonly int[] _bits = new int[64];
    private int _count;

    /// <summary>First coefficient less that of the block before.</summary>
    public int Difference { get; private set; }

    /// <summary>Reads a block.</summary>
    /// <exception cref="InvalidDataException">It is damaged, or the file ends inside it.</exception>
    public void Read(JpegBytes bytes, HuffmanTable first, HuffmanTable others)
    {
        var category = first.Read(bytes);
        if (category > 15)
        {
            throw new InvalidDataException("A coefficient is larger than there can be.");
        }

        Difference = Value(bytes.Bits(category), category);
        _count = 0;
        for (var place = 1; place < 64; place++)
        {
            var symbol = others.Read(bytes);
            var (run, size) = (symbol >> 4, symbol & 15);
            place += size == 0 && run != 15 ? 64 : run;
            if (place > 63 && size > 0)
            {
                throw new InvalidDataException("A block holds more coefficients than there are.");
            }

            (_symbols[_count], _bits[_count]) = (symbol, bytes.Bits(size));
            _count++;
        }
    }

    /// <summary>The coefficients behind the first.</summary>
    public void Unpack(Span<short> coefficients)
    {
        coefficients[1..].Clear();
        for (var (i, place) = (0, 1); i < _count; i++, place++)
        {
            var (run, size) = (_symbols[i] >> 4, _symbols[i] & 15);
            place += run;
            if (size > 0)
            {
                coefficients[place] = (short)Value(_bits[i], size);
            }
        }
    }

    /// <summary>Takes over other coefficients.</summary>
    public void Pack(ReadOnlySpan<short> coefficients)
    {
        (_count, var run) = (0, 0);
        for (var place = 1; place < 64; place++)
        {
            var value = coefficients[place];
            run = value == 0 ? run + 1 : run;
            for (; value != 0 && run > 15; run -= 16)
            {
                Add(SixteenZeros, 0);
            }

            if (value != 0)
            {
                var size = Category(value);
                Add((byte)((run << 4) | size), Bits(value, size));
                run = 0;
            }
        }

        if (run > 0)
        {
            Add(EndOfBlock, 0);
        }
    }

    /// <summary>Writes the block behind another one.</summary>
    public void Write(JpegBits bits, int difference, HuffmanTable first, HuffmanTable others)
    {
        var category = Category(difference);
        first.Write(bits, (byte)category);
        bits.Write(Bits(difference, category), category);
        for (var i = 0; i < _count; i++)
        {
            others.Write(bits, _symbols[i]);
            bits.Write(_bits[i], _symbols[i] & 15);
        }
    }

    private static int Category(int value) => 32 - System.Numerics.BitOperations.LeadingZeroCount((uint)Math.Abs(value));

    private static int Bits(int value, int category) => value < 0 ? value + (1 << category) - 1 : value;

    private static int Value(int bits, int category) => category > 0 && bits < 1 << (category - 1) ? bits - (1 << category) + 1 : bits;

    private void Add(byte symbol, int bits)
    {
        (_symbols[_count], _bits[_count]) = (symbol, bits);
        _count++;
    }
}
