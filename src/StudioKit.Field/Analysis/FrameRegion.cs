namespace StudioKit.Field.Analysis;

/// <summary>A ninth of the frame, by name.</summary>
/// <param name="Name">E.g. <c>top left corner</c>, <c>right edge</c>, <c>centre</c>.</param>
/// <param name="ClippedShare">Share of its background that is clipped to white [1].</param>
/// <param name="StopsMissing">How far its darkest background lies under clipping; 0 where it is white [1].</param>
public sealed record FrameRegion(string Name, double ClippedShare, double StopsMissing);
