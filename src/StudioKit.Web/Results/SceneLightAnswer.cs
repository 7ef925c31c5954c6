namespace StudioKit.Web.Results;

/// <summary>What to set when the light of the place changes.</summary>
/// <param name="Steps">From the darkest light to the brightest, a stop apart; empty where the card does not work, or the kit is not planned.</param>
public sealed record SceneLightAnswer(IReadOnlyList<SceneLightStep> Steps);
