using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Cards;

/// <summary>A finished card, its upper left corner at the origin of each drawing.</summary>
/// <param name="Front">The side seen first.</param>
/// <param name="Back">The other side; blank where there is none.</param>
internal sealed record Card(Drawing Front, Drawing? Back = null);
