namespace StudioKit.Physics.Light.Lobes;

/// <summary>What was read from a photometric file's text: a beam, or what is wrong with the text.</summary>
/// <param name="Lobe">The beam; none where the text could not be read.</param>
/// <param name="AxialIntensity">Luminous intensity on the axis that the text gives [cd]; a flash's own intensity·time replaces it.</param>
/// <param name="IsAbsolute">Whether the candelas are those of the lamp as it was measured, which the text says by −1 lumens, rather than of a lamp of so many lumens.</param>
/// <param name="Problem">What is wrong; none where the text was read.</param>
public sealed record IesReading(TabulatedLobe? Lobe, double AxialIntensity, bool IsAbsolute, IesProblem? Problem);
