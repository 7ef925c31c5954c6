using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>Something that the sun does at a time.</summary>
/// <param name="Kind">What it does.</param>
/// <param name="Minute">Minutes from midnight of the date by the clock [1].</param>
/// <param name="Height">Height of the sun then, with refraction.</param>
public sealed record SunEvent(SunEventKind Kind, int Minute, Angle Height);
