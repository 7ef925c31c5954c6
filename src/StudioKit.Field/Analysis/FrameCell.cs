namespace StudioKit.Field.Analysis;

/// <summary>One cell of the coarse grid laid over a frame.</summary>
/// <param name="BackgroundShare">Share of the cell that is background [1].</param>
/// <param name="ClippedShare">Share of that background that is clipped to white [1]; 0 where there is no background.</param>
/// <param name="Light">Mean light of the background in the channel that clips last, 1 at clipping [1].</param>
public readonly record struct FrameCell(double BackgroundShare, double ClippedShare, double Light);
