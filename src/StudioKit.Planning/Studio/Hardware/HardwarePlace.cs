using UnitsNet;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>Where so many alike are used.</summary>
/// <param name="Where">Label of a joint or piece, or name of a flash, modifier, holder or upright sheet.</param>
/// <param name="Count">How many there [1].</param>
/// <param name="Length">How long each is there; none where all are of one length or have none.</param>
public sealed record HardwarePlace(string Where, int Count, Length? Length = null);
