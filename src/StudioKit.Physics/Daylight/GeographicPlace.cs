using UnitsNet;

namespace StudioKit.Physics.Daylight;

/// <summary>A place on the earth.</summary>
public readonly record struct GeographicPlace
{
    /// <summary>Makes a place.</summary>
    /// <param name="latitude">Latitude φ, north positive; -90° to 90°.</param>
    /// <param name="longitude">Longitude, east positive; -180° to 180°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An angle is out of its range.</exception>
    public GeographicPlace(Angle latitude, Angle longitude)
    {
        Guard.Between(latitude.Degrees, -90, 90, nameof(latitude));
        Guard.Between(longitude.Degrees, -180, 180, nameof(longitude));
        (Latitude, Longitude) = (latitude, longitude);
    }

    /// <summary>Latitude, north positive.</summary>
    public Angle Latitude { get; }

    /// <summary>Longitude, east positive.</summary>
    public Angle Longitude { get; }
}
