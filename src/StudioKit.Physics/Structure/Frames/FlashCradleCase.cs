using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>Where the light design puts the flash below the panel.</summary>
/// <param name="BelowPanel">Bright window to the panel's underside; &gt; 0.</param>
/// <param name="OffsetRight">Right of the flat panel's centre.</param>
/// <param name="OffsetBack">Beyond the flat panel's centre.</param>
/// <param name="StandOff">Cradle rail's centre line to the bright window; ≥ 0.</param>
public sealed record FlashCradleCase(Length BelowPanel, Length OffsetRight, Length OffsetBack, Length StandOff);
