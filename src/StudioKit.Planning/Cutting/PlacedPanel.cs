using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>One rectangular piece in its place on a sheet.</summary>
/// <param name="Label">The piece's name.</param>
/// <param name="X">Left edge, from the sheet's squared left edge.</param>
/// <param name="Y">Lower edge, from the sheet's squared lower edge.</param>
/// <param name="Width">Side along X as it lies.</param>
/// <param name="Height">Side along Y as it lies.</param>
/// <param name="Turned">Whether it lies turned by a quarter against the way it was asked for.</param>
public sealed record PlacedPanel(string Label, Length X, Length Y, Length Width, Length Height, bool Turned);
