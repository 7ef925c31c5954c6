namespace StudioKit.Web.Results;

/// <summary>Asks where the lights of a card stand, and how the day goes.</summary>
/// <param name="Hash">Hash of the kit, as its plan gave it.</param>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Framing">Name of the framing.</param>
public sealed record OutdoorsRequest(string Hash, string SetUp, string Framing);
