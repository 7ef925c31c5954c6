namespace StudioKit.Web.Results;

/// <summary>A point of the panel and its white margin.</summary>
/// <param name="Place">From the panel's left edge, from its front edge along the sheet.</param>
/// <param name="Stops">Margin in stops.</param>
/// <param name="Text">The margin as it is said.</param>
public sealed record MarginPoint(Spot Place, double Stops, string Text);
