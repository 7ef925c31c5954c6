namespace StudioKit.Field.Calibration.Drift;

/// <summary>What the margin over a flash differs by from outing to outing.</summary>
/// <param name="Stops">Standard deviation in stops [1]; 0 where outings do not differ.</param>
/// <param name="IsOfFlash">Whether it is the flash's light that differs, so that a meter before it shows it; else only what is read of the sheet does.</param>
public sealed record OutingDifference(double Stops, bool IsOfFlash)
{
    /// <summary>Outings that do not differ.</summary>
    public static OutingDifference None { get; } = new(0, false);
}
