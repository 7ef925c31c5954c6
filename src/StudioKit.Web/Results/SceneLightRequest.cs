namespace StudioKit.Web.Results;

/// <summary>Asks what to set when the light of the place changes.</summary>
/// <param name="Hash">Hash of the kit, as its plan gave it.</param>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Framing">Name of the framing.</param>
public sealed record SceneLightRequest(string Hash, string SetUp, string Framing);
