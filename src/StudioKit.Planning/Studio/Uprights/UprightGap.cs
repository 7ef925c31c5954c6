using UnitsNet;

namespace StudioKit.Planning.Studio.Uprights;

/// <summary>A view that sees the ground under an upright sheet, or looks down past any.</summary>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Framing">Name of the framing.</param>
/// <param name="Pitch">Angle of the line of sight under the horizontal.</param>
/// <param name="By">How far under the sheet's lower edge it looks, along the sheet; none where it looks down past a sheet of any size.</param>
public sealed record UprightGap(string SetUp, string Framing, Angle Pitch, Length? By);
