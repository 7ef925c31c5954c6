using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>The hole of a pin, straight through a fitting and the pipe in it.</summary>
/// <param name="Width">Its diameter, that of the drill bit.</param>
/// <param name="FromMouth">Mouth of the fitting to the middle of the hole.</param>
public sealed record PinHole(Length Width, Length FromMouth);
