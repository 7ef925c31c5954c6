namespace StudioKit.Web.Results;

/// <summary>A band of white margins, told apart in the map by its pattern.</summary>
/// <param name="From">Where it begins in stops; none for the lowest, which has no beginning.</param>
/// <param name="Kind">What it means.</param>
/// <param name="Words">The same in words, with its bounds.</param>
public sealed record MarginBand(double? From, MarginBandKind Kind, string Words);
