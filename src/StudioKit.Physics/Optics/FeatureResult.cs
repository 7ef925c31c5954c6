using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>How much of a feature is left in the picture.</summary>
/// <param name="Contrast">Its contrast in the picture in the focused plane [1]; 0 where pixels or aperture pass nothing of it.</param>
/// <param name="Depth">Depth along the line of sight over which it is resolved; none where it is not resolved even in focus.</param>
/// <param name="InFocusLimit">What takes most of it in the focused plane.</param>
public sealed record FeatureResult(double Contrast, Length? Depth, FeatureLimit InFocusLimit)
{
    /// <summary>Whether it is resolved in the focused plane.</summary>
    public bool ResolvedInFocus => Depth is not null;
}
