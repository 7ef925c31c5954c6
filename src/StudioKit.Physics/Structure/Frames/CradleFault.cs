using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>Why a frame does not carry a flash, and by how much.</summary>
/// <param name="Kind">Why.</param>
/// <param name="By">How much is missing, or how far the window lies from panel or ground; nought where no length says it.</param>
public sealed record CradleFault(CradleFaultKind Kind, Length By)
{
    /// <summary>The reason as a clause that follows a colon.</summary>
    public string Clause => Kind switch
    {
        CradleFaultKind.TooLow => FormattableString.Invariant($"it would lie {By.Millimeters:0} mm too low, raise the panel or bring the flash nearer"),
        CradleFaultKind.TooNearTopRails => FormattableString.Invariant($"it would lie {By.Millimeters:0} mm too near the rails"),
        CradleFaultKind.OutsideLegs => "its rails would be too short between their tees",
        CradleFaultKind.TooNearAnotherRail => FormattableString.Invariant($"it would lie {By.Millimeters:0} mm too near the rail of another flash"),
        CradleFaultKind.HeadOutsideLegs => FormattableString.Invariant($"its head is {By.Millimeters:0} mm too large to go between the legs"),
        CradleFaultKind.HeadMeetsAnother => "its head would meet that of another flash that is up at once",
        CradleFaultKind.LowFrame => FormattableString.Invariant($"a low frame carries no flash, its window stands {By.Millimeters:0} mm over the ground"),
        _ => FormattableString.Invariant($"a window {By.Millimeters:0} mm below the panel lies under the ground"),
    };
}
