namespace StudioKit.Web.Results;

/// <summary>Asks how a framing of a planned kit would look with something of the studio moved.</summary>
/// <param name="Hash">Hash of the kit, as its plan gave it.</param>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Framing">Name of the framing.</param>
/// <param name="Moves">What is moved.</param>
/// <param name="Mark">Mark of the flash's dial that it is turned to, from 0 for full power; none for the one that the card asks for.</param>
public sealed record PreviewRequest(string Hash, string SetUp, string Framing, IReadOnlyList<HandleMove> Moves, int? Mark = null);
