namespace StudioKit.Field.Analysis;

/// <summary>A frame made small, with what each of its points shows, for the picture that marks where the background is not white.</summary>
/// <param name="Width">Points across [1].</param>
/// <param name="Height">Points down [1].</param>
/// <param name="Rgb">Red, green and blue of each point, row by row from the top left.</param>
/// <param name="Areas">What each point shows.</param>
/// <param name="Unclipped">Whether the point is background that is not white.</param>
public sealed record FrameThumbnail(
    int Width, int Height, IReadOnlyList<byte> Rgb, IReadOnlyList<FrameArea> Areas, IReadOnlyList<bool> Unclipped);
