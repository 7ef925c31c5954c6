namespace StudioKit.Field.Calibration.Drift;

/// <summary>What one outing alone says of a quantity.</summary>
/// <param name="Day">Day of the outing.</param>
/// <param name="Stops">Against the kit's figure, in stops [1].</param>
/// <param name="UncertaintyStops">Standard uncertainty in stops [1]; &gt; 0.</param>
public sealed record OutingEstimate(DateOnly Day, double Stops, double UncertaintyStops);
