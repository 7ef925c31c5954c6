namespace StudioKit.Field.Analysis;

/// <summary>Light on the subject's darkest parts: at least the veil is in it, so it bounds the veil from above.</summary>
/// <param name="ShareOfSaturation">Light of the darkest parts, 1 at clipping [1].</param>
/// <param name="StopsUnderClipping">The same, counted in stops under clipping [1].</param>
public sealed record ShadowVeil(double ShareOfSaturation, double StopsUnderClipping);
