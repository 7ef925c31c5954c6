using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>Why a frame does not carry a flash, and by how much.</summary>
/// <param name="Kind">Why.</param>
/// <param name="By">How much is missing, or how far the window lies from panel or ground; nought where no length says it.</param>
public sealed record CradleFault(CradleFaultKind Kind, Length By);
