using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Standing;

/// <summary>From where a light comes, seen from the subject.</summary>
/// <param name="Azimuth">Angle about the subject as seen from above, from the camera's side: 0° comes from the camera, 90° from its right, −90° from its left, 180° from behind the subject.</param>
/// <param name="Elevation">Height over the level of the subject; −90° to 90°, 90° comes from straight above.</param>
public readonly record struct LightDirection(Angle Azimuth, Angle Elevation)
{
    private const double HoursOfClock = 12;
    private const double HalfTurn = 180;

    /// <summary>The same as a unit vector from the subject towards the light.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The azimuth is not finite, or the elevation is outside its range.</exception>
    public Direction Towards
    {
        get
        {
            var (aside, ahead) = Math.SinCos(Guard.Finite(Azimuth.Radians, nameof(Azimuth)));
            var (up, level) = Math.SinCos(Guard.Between(Elevation.Degrees, -90, 90, nameof(Elevation)) * Math.PI / HalfTurn);
            return Direction.Of(level * aside, -level * ahead, up);
        }
    }

    /// <summary>The azimuth as the hour hand of a clock that lies about the subject, its six towards the camera.</summary>
    /// <returns>Hours, from above 0 to 12 [1]: 3 to the camera's right, 9 to its left, 12 behind the subject.</returns>
    [Source("CommonPractice", "clock directions, twelve straight ahead of the observer")]
    public double Hour
    {
        get
        {
            var hours = (HalfTurn - Guard.Finite(Azimuth.Degrees, nameof(Azimuth))) / (2 * HalfTurn / HoursOfClock);
            var within = hours - (HoursOfClock * Math.Floor(hours / HoursOfClock));
            return within <= 0 ? HoursOfClock : within;
        }
    }

    /// <summary>From where a camera looks that stands before the subject.</summary>
    /// <param name="pitch">Angle of its line of sight under the horizontal.</param>
    public static LightDirection OfCamera(Angle pitch) => new(Angle.Zero, pitch);

    /// <summary>Angle at the subject between two directions.</summary>
    /// <param name="other">The other direction.</param>
    /// <returns>cos γ = sin e₁·sin e₂ + cos e₁·cos e₂·cos(a₁ − a₂); 0° to 180°.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    [Source("Derived", "spherical law of cosines")]
    public Angle AngleTo(LightDirection other) => Angle.FromRadians(Math.Acos(Math.Clamp(Towards.Dot(other.Towards), -1, 1)));

    /// <summary>The place of a light that stands there.</summary>
    /// <param name="subject">The subject.</param>
    /// <param name="distance">Subject to light; &gt; 0 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not above zero, or an angle is outside its range.</exception>
    public Position PlaceFrom(Position subject, Length distance) => subject.Along(Towards, Guard.Positive(distance.Meters, nameof(distance)));
}
