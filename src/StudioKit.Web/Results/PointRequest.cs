namespace StudioKit.Web.Results;

/// <summary>Asks about a place of a planned kit's panel.</summary>
/// <param name="Hash">Hash of the kit, as its plan gave it.</param>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Framing">Framing whose account is wanted.</param>
/// <param name="Place">From the panel's left edge, from its front edge along the sheet.</param>
public sealed record PointRequest(string Hash, string SetUp, string Framing, Spot Place);
