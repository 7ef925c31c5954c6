namespace StudioKit.Physics.Optics;

/// <summary>Whether a stack reaches a magnification, and how it then stands.</summary>
/// <param name="Stack">The focused stack; none when the magnification is out of reach.</param>
/// <param name="Range">Magnifications that the lens's own focusing gives with these accessories.</param>
public sealed record FocusResult(OpticalStackResult? Stack, MagnificationRange Range);
