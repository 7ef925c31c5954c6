using UnitsNet;

namespace StudioKit.Physics.Daylight;

/// <summary>Where the sun's middle stands.</summary>
/// <param name="Height">Height over the horizon without the air's refraction; negative below it.</param>
/// <param name="Azimuth">Direction along the horizon, from north through east; 0° to under 360°.</param>
public readonly record struct SunDirection(Angle Height, Angle Azimuth)
{
    /// <summary>Whether the sun has passed the meridian and sinks.</summary>
    public bool Sinks => Azimuth.Degrees > 180;

    /// <summary>Height at which it is seen, lifted by refraction.</summary>
    public Angle SeenHeight => Height + AtmosphericRefraction.Lift(Height);
}
