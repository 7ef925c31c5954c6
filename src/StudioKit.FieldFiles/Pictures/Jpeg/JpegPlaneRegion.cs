using StudioKit.FieldFiles.Scale;

namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>The blocks of one plane that lie under a box of the picture.</summary>
internal sealed class JpegPlaneRegion
{
    private readonly int _left;
    private readonly int _top;
    private readonly int _columns;
    private readonly int _rows;
    private readonly short[] _coefficients;
    private readonly bool[] _seen;
    private readonly bool[] _changed;

    /// <summary>Room for the blocks.</summary>
    /// <param name="frame">The picture.</param>
    /// <param name="component">The plane.</param>
    /// <param name="box">The box, in stored pixels.</param>
    public JpegPlaneRegion(JpegFrame frame, JpegComponent component, StoredBox box)
    {
        (Frame, Component) = (frame, component);
        (_left, _top) = (box.Left * component.Across / frame.Across / 8, box.Top * component.Down / frame.Down / 8);
        var right = Math.Min(frame.BlocksWide(component), (((box.Right * component.Across) + frame.Across - 1) / frame.Across / 8) + 1);
        var bottom = Math.Min(frame.BlocksHigh(component), (((box.Bottom * component.Down) + frame.Down - 1) / frame.Down / 8) + 1);
        (_columns, _rows) = (right - _left, bottom - _top);
        _coefficients = new short[64 * _columns * _rows];
        _seen = new bool[_columns * _rows];
        _changed = new bool[_columns * _rows];
    }

    public JpegFrame Frame { get; }

    public JpegComponent Component { get; }

    /// <summary>Steps of the coefficients, in the order of the file.</summary>
    public ushort[] Steps { get; set; } = [];

    public bool Contains(int column, int row) => column >= _left && row >= _top && column < _left + _columns && row < _top + _rows;

    /// <summary>Coefficients of a block of the plane, in the order of the file.</summary>
    public Span<short> Block(int column, int row) => _coefficients.AsSpan(64 * Place(column, row), 64);

    /// <summary>Room for a block that the file gives.</summary>
    public Span<short> Take(int column, int row)
    {
        _seen[Place(column, row)] = true;
        return Block(column, row);
    }

    /// <summary>Whether a block is another than the file gave.</summary>
    public bool IsChanged(int column, int row) => Contains(column, row) && _changed[Place(column, row)];

    /// <summary>Places of all blocks.</summary>
    public IEnumerable<(int Column, int Row)> Places =>
        from row in Enumerable.Range(_top, _rows) from column in Enumerable.Range(_left, _columns) select (column, row);

    /// <summary>Mean of the samples [1], 0 to 255, from the first coefficients alone.</summary>
    public double Mean => Math.Clamp(128 + (Places.Average(place => (double)Block(place.Column, place.Row)[0]) * Steps[0] / 8), 0, 255);

    /// <summary>Whether every block was given by the file.</summary>
    public bool IsComplete => Array.TrueForAll(_seen, seen => seen);

    /// <summary>Puts the bar onto the blocks that it touches and leaves the others as they are.</summary>
    /// <param name="stamp">The bar.</param>
    /// <param name="white">What white is in this plane, 0 to 255.</param>
    /// <param name="black">What black is in this plane, 0 to 255.</param>
    public void Stamp(BarStamp stamp, byte white, byte black)
    {
        Span<double> samples = stackalloc double[64];
        Span<(double White, double Black)> shares = stackalloc (double, double)[64];
        foreach (var (column, row) in Places)
        {
            if (!Shares(stamp, column, row, shares))
            {
                continue;
            }

            var block = Block(column, row);
            BlockTransform.ToSamples(block, Steps, samples);
            for (var i = 0; i < 64; i++)
            {
                var (w, b) = shares[i];
                samples[i] = Math.Clamp(((1 - w - b) * samples[i]) + (w * white) + (b * black), 0, 255);
            }

            BlockTransform.ToCoefficients(samples, Steps, block);
            _changed[Place(column, row)] = true;
        }
    }

    // How much of each sample of a block the bar covers; false where it covers none of them.
    private bool Shares(BarStamp stamp, int column, int row, Span<(double White, double Black)> shares)
    {
        var (wide, high) = ((double)Frame.Across / Component.Across, (double)Frame.Down / Component.Down);
        var isTouched = false;
        for (var i = 0; i < 64; i++)
        {
            var (x, y) = ((8 * column) + (i % 8), (8 * row) + (i / 8));
            shares[i] = stamp.Over((int)(x * wide), (int)(y * high), (int)Math.Ceiling((x + 1) * wide), (int)Math.Ceiling((y + 1) * high));
            isTouched |= shares[i] != default;
        }

        return isTouched;
    }

    private int Place(int column, int row) => ((row - _top) * _columns) + column - _left;
}
