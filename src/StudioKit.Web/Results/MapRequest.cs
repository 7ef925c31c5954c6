namespace StudioKit.Web.Results;

/// <summary>Asks what a framing of a planned kit sees, place by place.</summary>
/// <param name="Hash">Hash of the kit, as its plan gave it.</param>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Framing">Name of the framing.</param>
public sealed record MapRequest(string Hash, string SetUp, string Framing);
