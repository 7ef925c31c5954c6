using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Scale;

/// <summary>A scale bar as it goes onto stored pixels: how much of each pixel becomes white, and how much black.</summary>
/// <param name="box">Stored pixels that it covers.</param>
/// <param name="white">Share of each pixel that becomes white, row by row, 255 being all of it.</param>
/// <param name="black">Share of each pixel that becomes black; with the white at most 255.</param>
internal sealed class BarStamp(StoredBox box, byte[] white, byte[] black)
{
    public StoredBox Box { get; } = box;

    public bool CoversRow(int row) => row >= Box.Top && row < Box.Bottom;

    /// <summary>Shares of a pixel that become white and black.</summary>
    public (int White, int Black) At(int column, int row)
    {
        if (column < Box.Left || column >= Box.Right || !CoversRow(row))
        {
            return default;
        }

        var place = ((row - Box.Top) * Box.Width) + column - Box.Left;
        return (white[place], black[place]);
    }

    /// <summary>Mean shares over pixels that a coarser sample stands for, 1 being all of it.</summary>
    public (double White, double Black) Over(int left, int top, int right, int bottom)
    {
        var (whites, blacks) = (0, 0);
        for (var row = top; row < bottom; row++)
        {
            for (var column = left; column < right; column++)
            {
                var (w, b) = At(column, row);
                whites += w;
                blacks += b;
            }
        }

        var all = 255.0 * (right - left) * (bottom - top);
        return (whites / all, blacks / all);
    }
}
