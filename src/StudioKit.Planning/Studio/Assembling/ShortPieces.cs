using UnitsNet;

namespace StudioKit.Planning.Studio.Assembling;

/// <summary>Pieces of one letter that vanish in their fittings, which touch or nearly touch over them.</summary>
/// <param name="Letter">Their letter.</param>
/// <param name="Length">What each is cut to.</param>
/// <param name="Count">How many the step takes [1].</param>
/// <param name="Shows">What is seen of each between its fittings; nought where they touch.</param>
public sealed record ShortPieces(string Letter, Length Length, int Count, Length Shows);
