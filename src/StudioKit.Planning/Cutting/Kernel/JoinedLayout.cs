namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>Two layouts with one cut between them.</summary>
/// <param name="Width">Width of both together [tenths of a millimetre].</param>
/// <param name="Height">Height of both together [tenths of a millimetre].</param>
/// <param name="First">The left or lower one.</param>
/// <param name="Second">The right or upper one.</param>
/// <param name="Direction">How the cut between them runs.</param>
internal sealed record JoinedLayout(int Width, int Height, Layout First, Layout Second, SheetCutDirection Direction)
    : Layout(Width, Height);
