using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>A rectangular panel and what presses on it.</summary>
/// <param name="ShortSide">Shorter side between supports; &gt; 0.</param>
/// <param name="LongSide">Longer side between supports; at least the shorter.</param>
/// <param name="Sheet">The sheet.</param>
/// <param name="Spread">Load spread evenly besides the panel's own weight; ≥ 0.</param>
/// <param name="Central">Force at the centre; ≥ 0.</param>
/// <param name="ContactRadius">Radius of the circle that the central force presses on; ≥ 0.</param>
public sealed record PanelLoadCase(
    Length ShortSide, Length LongSide, Sheet Sheet, Pressure Spread, Force Central, Length ContactRadius);
