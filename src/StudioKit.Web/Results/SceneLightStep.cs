namespace StudioKit.Web.Results;

/// <summary>What to set in one light of the place.</summary>
/// <param name="Stops">Stops brighter than planned; negative darker.</param>
/// <param name="Words">The light in words.</param>
/// <param name="Meter">What a meter reads in it.</param>
/// <param name="Turn">What to turn.</param>
/// <param name="Standing">Whether the card then holds.</param>
public sealed record SceneLightStep(int Stops, string Words, string Meter, string Turn, Standing Standing);
