namespace StudioKit.Web.Results;

/// <summary>Asks for a planned studio in space.</summary>
/// <param name="Hash">Hash of the kit, as its plan gave it.</param>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Framing">Framing whose cameras are shown.</param>
public sealed record SolidRequest(string Hash, string SetUp, string Framing);
