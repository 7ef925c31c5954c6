namespace StudioKit.Web.Results;

/// <summary>Where the lights of a card stand, and how the day goes.</summary>
/// <param name="Drawing">Both views as SVG; empty where no light stands about the subject.</param>
/// <param name="Lights">A line for each light.</param>
/// <param name="Day">The day in a line; empty where the kit has no date or place.</param>
/// <param name="Hours">Its hours.</param>
/// <param name="Notes">Sunrise and sunset, and what the light is worked out from.</param>
public sealed record OutdoorsAnswer(string Drawing, IReadOnlyList<string> Lights, string Day, IReadOnlyList<HourLine> Hours, IReadOnlyList<string> Notes);
