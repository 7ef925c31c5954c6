namespace StudioKit.Field.Analysis;

/// <summary>Where the subject's own tones lie, in stops under clipping, its outline not counted.</summary>
/// <param name="MiddleStops">The middle tone: half of the subject is darker [1].</param>
/// <param name="BrightestStops">The brightest but for a hundredth [1]; 0 where that clips.</param>
/// <param name="ClippedShare">Share of the subject that is itself clipped to white [1].</param>
public sealed record SubjectTones(double MiddleStops, double BrightestStops, double ClippedShare);
