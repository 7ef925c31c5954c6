namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>Pieces of one size, kerf included.</summary>
/// <param name="Width">Width as asked for, plus one kerf [tenths of a millimetre]; the longer side where it may turn.</param>
/// <param name="Height">Height as asked for, plus one kerf [tenths of a millimetre].</param>
/// <param name="MayTurn">Whether it may lie turned; never for a square.</param>
/// <param name="Pieces">The pieces, in the order of the request.</param>
internal sealed record SheetKind(int Width, int Height, bool MayTurn, SheetPiece[] Pieces)
{
    public int Demand => Pieces.Length;

    public long Area => (long)Width * Height;

    /// <summary>Whether it fits a rectangle one way or the other.</summary>
    public bool Fits(int width, int height) =>
        (Width <= width && Height <= height) || (MayTurn && Height <= width && Width <= height);

    /// <summary>The one or two ways it may lie.</summary>
    public IEnumerable<PieceLayout> Lying(int kind)
    {
        yield return new PieceLayout(Width, Height, kind);
        if (MayTurn)
        {
            yield return new PieceLayout(Height, Width, kind);
        }
    }
}
