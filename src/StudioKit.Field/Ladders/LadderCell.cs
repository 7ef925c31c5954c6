namespace StudioKit.Field.Ladders;

/// <summary>The power at which one cell of the frame clips.</summary>
/// <param name="Kind">How that is known.</param>
/// <param name="ClipPowerStops">The power, in stops above full power (mostly negative) [1].</param>
/// <param name="UncertaintyStops">Its standard uncertainty [1].</param>
public readonly record struct LadderCell(LadderCellKind Kind, double ClipPowerStops, double UncertaintyStops);
