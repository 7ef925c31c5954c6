using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Views;

namespace StudioKit.Planning.Expected;

/// <summary>The white margin that a plan expects over a frame of the bare panel.</summary>
public sealed class ExpectedFrame
{
    private readonly Dictionary<(int Column, int Row), double> _margins = [];
    private readonly double[] _across;
    private readonly double[] _upright;

    internal ExpectedFrame(WhiteMarginMap map, double gain)
    {
        _across = [.. map.Points.Select(point => point.FrameRight).Distinct().Order()];
        _upright = [.. map.Points.Select(point => point.FrameUp).Distinct().OrderDescending()];
        foreach (var point in map.Points)
        {
            _margins[(Array.IndexOf(_across, point.FrameRight), Array.IndexOf(_upright, point.FrameUp))] = point.Margin.Value + gain;
        }

        Darkest = new Stops(map.Darkest!.Margin.Value + gain);
        Brightest = new Stops(map.Brightest!.Margin.Value + gain);
    }

    /// <summary>Margin of the darkest visible point.</summary>
    public Stops Darkest { get; }

    /// <summary>Margin of the brightest visible point.</summary>
    public Stops Brightest { get; }

    /// <summary>Margins at the middles of a grid of cells laid over the frame.</summary>
    /// <param name="columns">Cells across [1]; ≥ 1.</param>
    /// <param name="rows">Cells down [1]; ≥ 1.</param>
    /// <returns>Stops above clipping, [row, column] from the top left; not a number where the frame sees past the panel.</returns>
    public double[,] MarginsAt(int columns, int rows)
    {
        var margins = new double[rows, columns];
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                margins[row, column] = At(((column + 0.5) / columns) - 0.5, 0.5 - ((row + 0.5) / rows));
            }
        }

        return margins;
    }

    // Between the four nearest points by straight lines.
    private double At(double right, double up)
    {
        var (i, u) = Split(_across, right, descending: false);
        var (j, v) = Split(_upright, up, descending: true);
        return ((((1 - u) * Margin(i, j)) + (u * Margin(i + 1, j))) * (1 - v)) + ((((1 - u) * Margin(i, j + 1)) + (u * Margin(i + 1, j + 1))) * v);
    }

    private double Margin(int column, int row) => _margins.TryGetValue((column, row), out var margin) ? margin : double.NaN;

    private static (int First, double Share) Split(double[] places, double at, bool descending)
    {
        var first = 0;
        while (first < places.Length - 2 && (descending ? places[first + 1] > at : places[first + 1] < at))
        {
            first++;
        }

        return (first, places.Length < 2 ? 0 : (at - places[first]) / (places[first + 1] - places[first]));
    }
}
