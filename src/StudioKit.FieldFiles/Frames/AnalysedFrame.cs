using StudioKit.Field.Analysis;

namespace StudioKit.FieldFiles.Frames;

/// <summary>One frame of a batch.</summary>
/// <param name="Analysis">What it says; its thumbnail is left out, so that a batch of any size keeps to its memory.</param>
/// <param name="Picture">The frame small with what is not white hatched, a PNG file; none where nobody asked for it.</param>
public sealed record AnalysedFrame(FrameAnalysis Analysis, byte[]? Picture);
