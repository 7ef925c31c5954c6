namespace StudioKit.Physics.Optics;

/// <summary>Blur over a subject's depth, with the lens focused on its middle.</summary>
/// <param name="Nearest">At the point nearest the camera.</param>
/// <param name="Middle">In the focused plane.</param>
/// <param name="Farthest">At the point farthest from the camera.</param>
public sealed record SubjectBlurResult(BlurResult Nearest, BlurResult Middle, BlurResult Farthest);
