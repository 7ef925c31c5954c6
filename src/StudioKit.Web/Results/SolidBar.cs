namespace StudioKit.Web.Results;

/// <summary>A pipe in space.</summary>
/// <param name="From">One end of its centre line.</param>
/// <param name="To">The other end.</param>
/// <param name="Thickness">Outside diameter in millimetres.</param>
public sealed record SolidBar(Place From, Place To, double Thickness);
