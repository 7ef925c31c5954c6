namespace StudioKit.Web.Results;

/// <summary>A camera and what it looks at in space.</summary>
/// <param name="Pupil">The camera's entrance pupil.</param>
/// <param name="Aim">Where its line of sight goes.</param>
public sealed record SolidSight(Place Pupil, Place Aim);
