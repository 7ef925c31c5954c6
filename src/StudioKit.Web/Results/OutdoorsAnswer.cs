namespace StudioKit.Web.Results;

/// <summary>Where the lights of a card stand, and how the day goes.</summary>
/// <param name="Lights">A line for each light.</param>
/// <param name="Day">The day in a line; empty where the kit has no date or place.</param>
/// <param name="Pages">Both views of the lights, where any stand about the subject, then the pages of the day, as SVG.</param>
public sealed record OutdoorsAnswer(IReadOnlyList<string> Lights, string Day, IReadOnlyList<string> Pages);
