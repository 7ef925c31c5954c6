namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>A guide number read from a table, with what must be said about it.</summary>
/// <param name="GuideNumber">Guide number at full power and ISO 100.</param>
/// <param name="Caveats">Sentences that a sheet must print beside it.</param>
public sealed record GuideNumberAtZoom(GuideNumber GuideNumber, IReadOnlyList<string> Caveats);
