namespace StudioKit.Web.Results;

/// <summary>A gain or loss of light.</summary>
/// <param name="Item">What gains or loses.</param>
/// <param name="Stops">By how much.</param>
/// <param name="Detail">The value behind it.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record AccountLine(string Item, string Stops, string Detail, string Source);
