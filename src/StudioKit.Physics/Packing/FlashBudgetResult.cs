namespace StudioKit.Physics.Packing;

/// <summary>A day's flashes against the cells carried.</summary>
/// <param name="FullPowerFlashes">The day's flashes as full-power ones [1].</param>
/// <param name="SetsNeeded">Sets of cells used up, begun ones counted whole [1].</param>
/// <param name="FlashesCarried">Flashes at that power that the sets carried give [1].</param>
/// <param name="Enough">Whether the sets carried last.</param>
public sealed record FlashBudgetResult(double FullPowerFlashes, int SetsNeeded, int FlashesCarried, bool Enough);
