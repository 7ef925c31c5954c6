namespace StudioKit.Web.Results;

/// <summary>A pipe in the side view.</summary>
/// <param name="From">One end of its centre line.</param>
/// <param name="To">The other end; the same point where it runs across the view.</param>
/// <param name="Thickness">Outside diameter in millimetres.</param>
public sealed record SideBar(Spot From, Spot To, double Thickness);
