using StudioKit.Physics.Exposure;

namespace StudioKit.Physics.Daylight;

/// <summary>Light on level ground that is to be expected.</summary>
/// <param name="Typical">Its mean.</param>
/// <param name="Darkest">As dark as it may be.</param>
/// <param name="Brightest">As bright as it may be.</param>
public readonly record struct ExpectedDaylight(ExposureValue Typical, ExposureValue Darkest, ExposureValue Brightest);
