namespace StudioKit.Web.Results;

/// <summary>A flash under the panel.</summary>
/// <param name="Flash">Its name.</param>
/// <param name="Key">Path of its light in the kit.</param>
/// <param name="Centre">Middle of its window seen from above: from the panel's left edge, from its front edge.</param>
/// <param name="Width">Width of the window across the view in millimetres.</param>
/// <param name="Depth">Its size along the view in millimetres.</param>
/// <param name="Distance">Window to the panel's underside in millimetres.</param>
/// <param name="Window">The window in the side view, its front end first.</param>
public sealed record LowerLight(string Flash, string Key, Spot Centre, double Width, double Depth, double Distance, IReadOnlyList<Spot> Window);
