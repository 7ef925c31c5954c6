namespace StudioKit.Field.Analysis;

/// <summary>Words in a picture of a frame.</summary>
/// <param name="Text">The words.</param>
/// <param name="Middle">Their middle, in points from the left [1].</param>
/// <param name="Baseline">Where they stand, in points from the top [1].</param>
public sealed record FrameLabel(string Text, double Middle, double Baseline);
