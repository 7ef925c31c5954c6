using UnitsNet;

namespace StudioKit.Planning.Studio.Uprights;

/// <summary>From where on a stem out of focus is not seen before a white sheet.</summary>
/// <param name="Width">Width of the stem.</param>
/// <param name="From">Distance behind the subject from which on it vanishes; none where it shows right to the sheet.</param>
public sealed record VanishingStem(Length Width, Length? From);
