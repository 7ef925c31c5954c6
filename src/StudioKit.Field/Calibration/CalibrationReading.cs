namespace StudioKit.Field.Calibration;

/// <summary>One reading beside what the plan makes of the same thing. Both in stops on any scale, since only their difference counts.</summary>
/// <param name="Name">How it is called in the report, e.g. a file name.</param>
/// <param name="Kind">What was read.</param>
/// <param name="Flash">Name of the flash that gave the light.</param>
/// <param name="Planned">What the plan expects, in stops [1].</param>
/// <param name="Measured">What was read, in stops [1].</param>
/// <param name="Uncertainty">Standard uncertainty of the reading, in stops [1]; &gt; 0.</param>
public sealed record CalibrationReading(
    string Name, CalibrationReadingKind Kind, string Flash, double Planned, double Measured, double Uncertainty)
{
    /// <summary>Name of the dome, softbox or diffuser that the light came through; empty where it was bare.</summary>
    public string Modifier { get; init; } = "";
}
