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
        var swapped = orientation >= PictureOrientation.MirroredOnLeft;
        var seen = new BlockGrid(swapped ? Rows : Columns, swapped ? Columns : Rows, BlockSize);
        for (var row = 0; row < seen.Rows; row++)
        {
            for (var column = 0; column < seen.Columns; column++)
            {
                var (storedColumn, storedRow) = Stored(orientation, column, row);
                seen[column, row] = this[storedColumn, storedRow];
            }
        }

        return seen;
    }

    private (int Column, int Row) Stored(PictureOrientation orientation, int column, int row) => orientation switch
    {
        PictureOrientation.MirroredUpright => (Columns - 1 - column, row),
        PictureOrientation.UpsideDown => (Columns - 1 - column, Rows - 1 - row),
        PictureOrientation.MirroredUpsideDown => (column, Rows - 1 - row),
        PictureOrientation.MirroredOnLeft => (row, column),
        PictureOrientation.TurnClockwise => (row, Rows - 1 - column),
        PictureOrientation.MirroredOnRight => (Columns - 1 - row, Rows - 1 - column),
        PictureOrientation.TurnAnticlockwise => (Columns - 1 - row, column),
        _ => (column, row),
    };
}
