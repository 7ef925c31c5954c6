namespace StudioKit.Web.Results;

/// <summary>Asks for the kit of a design of the last search.</summary>
/// <param name="Code">What the design is known by.</param>
public sealed record DesignRequest(string Code);
