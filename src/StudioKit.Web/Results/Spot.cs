namespace StudioKit.Web.Results;

/// <summary>A point of a drawing in millimetres.</summary>
/// <param name="X">To the right; in a side view away from the camera.</param>
/// <param name="Y">Away from the camera; in a side view up from the ground.</param>
public readonly record struct Spot(double X, double Y);
