using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>A rectangle of sheet at some moment of the cutting: cut further, a finished piece, or left over.</summary>
/// <param name="X">Left edge, from the sheet's squared left edge.</param>
/// <param name="Y">Lower edge, from the sheet's squared lower edge.</param>
/// <param name="Width">Side along X.</param>
/// <param name="Height">Side along Y.</param>
/// <param name="Cut">The next cut; null where the region is finished.</param>
/// <param name="Piece">The piece it is; null where it is cut further or left over.</param>
public sealed record SheetRegion(Length X, Length Y, Length Width, Length Height, SheetCut? Cut, PlacedPanel? Piece)
{
    /// <summary>Whether the region is finished and no piece.</summary>
    public bool LeftOver => Cut is null && Piece is null;
}
