namespace StudioKit.Physics.Light.Placements;

/// <summary>A place of the sheet that a camera looks at.</summary>
/// <param name="X">To the right of the panel's middle [m].</param>
/// <param name="S">Along the sheet from its front edge [m].</param>
/// <param name="Towards">The way from there to the camera.</param>
internal readonly record struct PanelSight(double X, double S, Direction Towards);
