namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>A single piece.</summary>
/// <param name="Width">Side along X as it lies [tenths of a millimetre].</param>
/// <param name="Height">Side along Y as it lies [tenths of a millimetre].</param>
/// <param name="Kind">Index of its kind in the job.</param>
internal sealed record PieceLayout(int Width, int Height, int Kind) : Layout(Width, Height);
