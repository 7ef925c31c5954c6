namespace StudioKit.Web.Results;

/// <summary>What one framing sees of the panel at one camera angle.</summary>
/// <param name="PitchDegrees">Angle of the line of sight under the horizontal.</param>
/// <param name="Upright">Whether the frame stands upright.</param>
/// <param name="Patch">Outline of what is seen, from the panel's left edge and along the sheet from its front edge.</param>
/// <param name="Pupil">The camera's entrance pupil in the side view.</param>
/// <param name="Aim">Where the line of sight goes, in the side view.</param>
/// <param name="Darkest">Darkest visible point; none where the frame misses the panel.</param>
public sealed record SeenView(double PitchDegrees, bool Upright, IReadOnlyList<Spot> Patch, Spot Pupil, Spot Aim, MarginPoint? Darkest);
