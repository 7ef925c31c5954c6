namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>One kind of sheet, in the planners' whole numbers.</summary>
/// <param name="Row">Its place in the request.</param>
/// <param name="Width">Usable width plus one kerf [tenths of a millimetre].</param>
/// <param name="Height">Usable height plus one kerf [tenths of a millimetre].</param>
/// <param name="Cost">Cost of one [ticks].</param>
/// <param name="Available">How many there are, at most as many as there are pieces.</param>
internal sealed record SheetStock(int Row, int Width, int Height, long Cost, int Available)
{
    public long Area => (long)Width * Height;

    public bool Holds(Layout layout) => layout.Width <= Width && layout.Height <= Height;
}
