using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Field.Analysis;

/// <summary>How the flash beneath the panel stood when a test frame was taken, with its limits.</summary>
/// <param name="Power">Power it was set to.</param>
/// <param name="LowestPower">Lowest power it can be set to.</param>
/// <param name="Distance">Bright window to panel; &gt; 0.</param>
/// <param name="ShortestDistance">How near it can stand.</param>
public sealed record BeneathFlash(FlashPower Power, FlashPower LowestPower, Length Distance, Length ShortestDistance);
