using StudioKit.Field.Pictures;

namespace StudioKit.Field.Analysis;

/// <summary>A picture boiled down to small square blocks, each with its mean light and how much of it is clipped.</summary>
internal sealed class BlockGrid(int columns, int rows, int blockSize)
{
    public int Columns { get; } = columns;

    public int Rows { get; } = rows;

    public int BlockSize { get; } = blockSize;

    /// <summary>Statistics row by row from the top left.</summary>
    public BlockStatistics[] Blocks { get; private init; } = new BlockStatistics[columns * rows];

    public ref BlockStatistics this[int column, int row] => ref Blocks[(row * Columns) + column];

    /// <summary>The grid as the picture is seen, given how its rows are stored.</summary>
    public BlockGrid Turned(PictureOrientation orientation)
    {
        var place = new SeenPicture(orientation, Columns, Rows);
        var seen = new BlockGrid(place.Width, place.Height, BlockSize);
        for (var row = 0; row < seen.Rows; row++)
        {
            for (var column = 0; column < seen.Columns; column++)
            {
                var (x, y) = place.Stored(column + 0.5, row + 0.5);
                seen[column, row] = this[(int)x, (int)y];
            }
        }

        return seen;
    }
}
