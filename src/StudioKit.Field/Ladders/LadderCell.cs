namespace StudioKit.Field.Ladders;

/// <summary>The power at which one cell of the frame clips.</summary>
/// <param name="Kind">How that is known.</param>
/// <param name="ClipPowerStops">The power, in stops above full power (mostly negative) [1].</param>
/// <param name="UncertaintyStops">Its standard uncertainty [1].</param>
public sealed record LadderCell(LadderCellKind Kind, double ClipPowerStops, double UncertaintyStops)
{
    /// <summary>Standard uncertainty of that power as the rungs that show the cell differ among themselves [1]; 0 where only one does.</summary>
    public double ScatterStops { get; init; }

    /// <summary>How far under clipping the cell was seen, in stops, each rung by its weight [1].</summary>
    public double DepthStops { get; init; }

    /// <summary>How near under clipping it was seen on any rung, in stops [1]; not a number where no rung shows it.</summary>
    public double NearestStops { get; init; } = double.NaN;
}
