namespace StudioKit.Web.Results;

/// <summary>Asks about one card: what to set in other light, where its lights stand, how its day goes.</summary>
/// <param name="Hash">Hash of the kit, as its plan gave it.</param>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Framing">Name of the framing.</param>
public sealed record CardRequest(string Hash, string SetUp, string Framing);
