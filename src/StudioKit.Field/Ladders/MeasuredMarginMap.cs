using StudioKit.Field.Pictures;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Ladders;

/// <summary>Measured white margin over the frame, from a power ladder.</summary>
/// <param name="Columns">Cells across [1].</param>
/// <param name="Rows">Cells down [1].</param>
/// <param name="Cells">The power at which each cell clips, row by row from the top left.</param>
/// <param name="ResponseSlope">How many stops the picture brightens when the power goes up by one [1]; 1 for an unbent tone curve.</param>
/// <param name="Caveats">What to bear in mind, one sentence each.</param>
public sealed record MeasuredMarginMap(
    int Columns, int Rows, IReadOnlyList<LadderCell> Cells, double ResponseSlope, IReadOnlyList<string> Caveats)
{
    /// <summary>Tone curve that it was read by.</summary>
    public ToneCurve Curve { get; init; } = ToneCurve.Standard;

    /// <summary>Whether that curve was learnt from this ladder, or found to be the standard one by it.</summary>
    public bool IsCurveLearnt { get; init; }

    /// <summary>White margin of each cell at a given power.</summary>
    /// <param name="power">Power of the flash beneath the panel.</param>
    /// <returns>Stops above clipping [1], negative under it; not a number where nothing is known.</returns>
    public IReadOnlyList<double> MarginsAt(FlashPower power) =>
        [.. Cells.Select(cell => cell.Kind == LadderCellKind.Unknown ? double.NaN : -power.StopsBelowFull - cell.ClipPowerStops)];

    /// <summary>Margin of the darkest known cell at a given power.</summary>
    /// <param name="power">Power of the flash beneath the panel.</param>
    /// <returns>Stops above clipping [1], negative under it, and whether it is only the least it can be; none where nothing is known.</returns>
    public (double Stops, bool IsLeast)? DarkestAt(FlashPower power) => WholeFrameClipsAtStops is { } clips
        ? (-power.StopsBelowFull - clips, Cells.Any(cell => cell.Kind == LadderCellKind.AtMost && cell.ClipPowerStops >= clips))
        : null;

    /// <summary>Standard uncertainty of the margin of the darkest known cell; none where nothing is known of it, or only the least.</summary>
    /// <remarks>
    /// What the rungs were trusted with or how far they scatter, whichever is more, and the doubt about the tone curve: a curve ends at clipping by its
    /// nature, so what is wrong with it counts the less the nearer to clipping the cell was seen, and from a stop under it on in full. A curve that was learnt
    /// here is only assumed where no cell was seen so near to clipping.
    /// </remarks>
    [Source("CommonPractice", "the larger of the uncertainty from within and from scatter; a tone curve ends at clipping")]
    public Stops? DarkestUncertainty => WholeFrameClipsAtStops is { } clips && Cells.First(cell => cell.ClipPowerStops == clips) is { Kind: not LadderCellKind.AtMost } darkest
        ? new Stops(Math.Sqrt(Squared(Math.Max(darkest.UncertaintyStops, darkest.ScatterStops)) + Squared(Curve.PlusMinus * Math.Min(1, darkest.DepthStops)) + Squared(Unseen)))
        : null;

    private double Unseen => IsCurveLearnt && !Curve.IsStandard
        ? ToneCurve.Standard.PlusMinus * Math.Min(1, Cells.Select(cell => cell.NearestStops).Where(double.IsFinite).DefaultIfEmpty(0).Min())
        : 0;

    private static double Squared(double value) => value * value;

    /// <summary>Margin of the brightest known cell less that of the darkest, or the least that this is; none where nothing is known.</summary>
    public Stops? Spread => Cells.Where(cell => cell.Kind != LadderCellKind.Unknown).Select(cell => cell.ClipPowerStops).ToList() is { Count: > 0 } known
        ? new Stops(known.Max() - known.Min())
        : null;

    /// <summary>Whether the brightest cell was white on every rung, so that <see cref="Spread"/> is only the least it can be.</summary>
    public bool SpreadIsLeast => Cells.Any(cell => cell.Kind == LadderCellKind.AtMost);

    /// <summary>The power at which the last known cell clips, in stops above full power [1]; none where nothing is known.</summary>
    public double? WholeFrameClipsAtStops =>
        Cells.Where(cell => cell.Kind != LadderCellKind.Unknown).Select(cell => (double?)cell.ClipPowerStops).Max();
}
