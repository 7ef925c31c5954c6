namespace StudioKit.Web.Results;

/// <summary>Asks for the commented kit to begin with.</summary>
public sealed record StarterRequest;
