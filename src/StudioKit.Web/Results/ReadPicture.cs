namespace StudioKit.Web.Results;

/// <summary>A picture that was read.</summary>
/// <param name="Size">Its size in words; empty where it could not be read.</param>
/// <param name="Settings">What its file says of how it was taken, in words; empty where it does not.</param>
/// <param name="Power">Power of the lower flash that its name or description tells; empty where neither does.</param>
/// <param name="MapWidth">Points of its map across.</param>
/// <param name="MapHeight">Points of its map down.</param>
/// <param name="Faults">Why it cannot be read; empty where it was.</param>
public sealed record ReadPicture(string Size, string Settings, string Power, int MapWidth, int MapHeight, IReadOnlyList<string> Faults);
