namespace StudioKit.Web.Results;

/// <summary>A place in the studio in millimetres.</summary>
/// <param name="Right">To the right of the panel's middle.</param>
/// <param name="Back">Behind the panel's front edge.</param>
/// <param name="Up">Over the ground.</param>
public readonly record struct Place(double Right, double Back, double Up);
