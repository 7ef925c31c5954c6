using StudioKit.Field.Analysis;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Expected;

namespace StudioKit.Field.Ladders;

/// <summary>A measured white margin map beside the simulated one.</summary>
/// <param name="Columns">Cells across [1].</param>
/// <param name="Rows">Cells down [1].</param>
/// <param name="Measured">Measured margin of each cell in stops [1]; not a number where unknown.</param>
/// <param name="Simulated">Simulated margin at the middle of each cell in stops [1].</param>
/// <param name="Difference">Measured less simulated in stops [1]; not a number where the margin was not measured, only bounded.</param>
/// <param name="MeanStops">Mean difference [1]: what a wrong guide number, transmittance or clip point shows as; not a number where none could be taken.</param>
/// <param name="SpreadStops">Root mean square of what is left after taking the mean away [1]: what a wrong position or beam shows as.</param>
public sealed record MarginComparison(
    int Columns,
    int Rows,
    IReadOnlyList<double> Measured,
    IReadOnlyList<double> Simulated,
    IReadOnlyList<double> Difference,
    double MeanStops,
    double SpreadStops)
{
    /// <summary>Lays a plan's map over a measured one.</summary>
    /// <param name="measured">Map from a power ladder.</param>
    /// <param name="frame">One of its frames, for the settings and the shape.</param>
    /// <param name="place">Set-up, framing and pitch it was taken at.</param>
    /// <param name="flash">How the flash below stood; the comparison is for its power.</param>
    /// <param name="expected">What the plan expects.</param>
    /// <returns>The comparison, or why there is none.</returns>
    public static FieldResult<MarginComparison> Of(MeasuredMarginMap measured, FrameAnalysis frame, PlanPlace place, BeneathFlash flash, ExpectedLight expected)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(flash);
        ArgumentNullException.ThrowIfNull(expected);
        var shot = new ShotSettings(flash.Power, flash.Distance, frame.Settings.MarkedAperture, frame.Settings.MarkedIso);
        return expected.OnSensor(place.SetUp, place.Framing, place.Pitch, frame.Height > frame.Width, shot) is { } planned
            ? Of(measured, flash.Power, planned.MarginsAt(measured.Columns, measured.Rows))
            : new FieldDiagnostic("FLD209", frame.Path, "The plan has no light map for this: its geometry is impossible, or the frame misses the panel.") { Help = FieldHelp.Plan };
    }

    /// <summary>Lays a simulated map over a measured one.</summary>
    /// <param name="measured">Map from a power ladder.</param>
    /// <param name="power">Power the simulation was run for.</param>
    /// <param name="simulated">Simulated margin in stops on a grid that spans the frame, [row, column] from the top left; not a number where the panel is not seen.</param>
    /// <exception cref="ArgumentException">The simulated grid is empty.</exception>
    public static MarginComparison Of(MeasuredMarginMap measured, FlashPower power, double[,] simulated)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(simulated);
        if (simulated.Length == 0)
        {
            throw new ArgumentException("The simulated grid is empty.", nameof(simulated));
        }

        var margins = measured.MarginsAt(power);
        var expected = Enumerable.Range(0, margins.Count).Select(cell => At(
            simulated,
            ((cell % measured.Columns) + 0.5) / measured.Columns,
            ((cell / measured.Columns) + 0.5) / measured.Rows)).ToList();
        var difference = margins.Select((margin, i) =>
            measured.Cells[i].Kind == LadderCellKind.AtMost ? double.NaN : margin - expected[i]).ToList();
        var known = difference.Where(double.IsFinite).ToList();
        var mean = known.Count == 0 ? double.NaN : known.Average();
        var spread = known.Count == 0 ? double.NaN : Math.Sqrt(known.Average(d => (d - mean) * (d - mean)));
        return new MarginComparison(measured.Columns, measured.Rows, margins, expected, difference, mean, spread);
    }

    // Bilinear between the middles of the grid's cells, level beyond the outermost ones.
    private static double At(double[,] grid, double x, double y)
    {
        var (rows, columns) = (grid.GetLength(0), grid.GetLength(1));
        var (u, v) = (Math.Clamp((x * columns) - 0.5, 0, columns - 1), Math.Clamp((y * rows) - 0.5, 0, rows - 1));
        var (i, j) = ((int)u, (int)v);
        var (right, below) = (Math.Min(i + 1, columns - 1), Math.Min(j + 1, rows - 1));
        var top = grid[j, i] + ((grid[j, right] - grid[j, i]) * (u - i));
        var bottom = grid[below, i] + ((grid[below, right] - grid[below, i]) * (u - i));
        return top + ((bottom - top) * (v - j));
    }
}
