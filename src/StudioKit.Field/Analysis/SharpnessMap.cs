namespace StudioKit.Field.Analysis;

/// <summary>Sharpness by tile.</summary>
/// <param name="Columns">Tiles across [1].</param>
/// <param name="Rows">Tiles down [1].</param>
/// <param name="Relative">Contrast between neighbouring pixels against the sharpest tile [1]; 0 to 1, row by row from the top left.</param>
/// <param name="BestCodeStep">Root mean square step between neighbouring pixels in the sharpest tile, in code values of 255 [1].</param>
public sealed record SharpnessMap(int Columns, int Rows, IReadOnlyList<double> Relative, double BestCodeStep);
