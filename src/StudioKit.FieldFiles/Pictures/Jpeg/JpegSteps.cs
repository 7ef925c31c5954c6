namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>The quantisation tables of a JPEG, each in the order of the file.</summary>
internal sealed class JpegSteps
{
    private readonly ushort[]?[] _tables = new ushort[]?[4];

    /// <summary>A table.</summary>
    /// <exception cref="InvalidDataException">There is none of that number.</exception>
    public ushort[] this[int number] => _tables[number] ?? throw new InvalidDataException("A quantisation table is missing.");

    /// <summary>Takes in the tables of a segment.</summary>
    /// <exception cref="InvalidDataException">They are damaged.</exception>
    public void Read(byte[] data)
    {
        for (var at = 0; at < data.Length;)
        {
            var (wide, number) = (data[at] >> 4, data[at] & 15);
            var size = wide == 0 ? 64 : 128;
            if (number > 3 || wide > 1 || at + 1 + size > data.Length)
            {
                throw new InvalidDataException("A quantisation table is damaged.");
            }

            var table = data.AsSpan(at + 1, size).ToArray();
            _tables[number] = [.. Enumerable.Range(0, 64).Select(i => wide == 0 ? table[i] : (ushort)((table[2 * i] << 8) | table[(2 * i) + 1]))];
            at += 1 + size;
        }
    }
}
