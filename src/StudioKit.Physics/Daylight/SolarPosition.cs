using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Daylight;

/// <summary>Where the sun stands, by the low-accuracy theory of its motion: to 0.01° from 1900 to 2100.</summary>
/// <remarks>
/// The seconds between the time of the orbits and that of the clocks, about 70, move the sun by 0.001° and are left out, as is parallax (0.0024°).
/// </remarks>
public static class SolarPosition
{
    private const double J2000 = 2451545;
    private const double DaysInCentury = 36525;
    private const double MinutesInDay = 1440;

    // Of midnight before 1 January of the year 1, from where dates are counted.
    private const double DayOfYearOne = 1721425.5;

    /// <summary>Julian day of a date and time.</summary>
    /// <param name="date">Date in Universal Time.</param>
    /// <param name="minutes">Minutes from its midnight in Universal Time [min]; may lie beyond the day.</param>
    /// <returns>Days since noon of 1 January 4713 BC [d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The minutes are not finite.</exception>
    [Source("Meeus1998", "ch. 7")]
    public static double JulianDay(DateOnly date, double minutes) => DayOfYearOne + date.DayNumber + (Guard.Finite(minutes) / MinutesInDay);

    /// <summary>Apparent right ascension and declination of the sun.</summary>
    /// <param name="julianDay">Julian day JD [d]; finite.</param>
    /// <returns>α from 0° to under 360°, and δ.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The day is not finite.</exception>
    /// <remarks>Mean longitude, equation of the centre, nutation and aberration; α and δ by the obliquity of the ecliptic.</remarks>
    [Source("Meeus1998", "ch. 25, low accuracy, formulas 25.2 to 25.8")]
    public static (Angle RightAscension, Angle Declination) Apparent(double julianDay)
    {
        var t = (Guard.Finite(julianDay) - J2000) / DaysInCentury;
        var anomaly = Radians(357.52911 + (t * (35999.05029 - (0.0001537 * t))));
        var centre = ((1.914602 - (t * (0.004817 + (0.000014 * t)))) * Math.Sin(anomaly))
            + ((0.019993 - (0.000101 * t)) * Math.Sin(2 * anomaly)) + (0.000289 * Math.Sin(3 * anomaly));
        var node = Radians(125.04 - (1934.136 * t));
        var longitude = Radians(280.46646 + (t * (36000.76983 + (0.0003032 * t))) + centre - 0.00569 - (0.00478 * Math.Sin(node)));
        var obliquity = Radians(23.4392911 - (t * (0.0130042 + (t * (0.00000016 - (0.000000504 * t))))) + (0.00256 * Math.Cos(node)));
        var rightAscension = Math.Atan2(Math.Cos(obliquity) * Math.Sin(longitude), Math.Cos(longitude));
        return (Angle.FromDegrees(Turned(Degrees(rightAscension))), Angle.FromRadians(Math.Asin(Math.Sin(obliquity) * Math.Sin(longitude))));
    }

    /// <summary>Direction of the sun at a place.</summary>
    /// <param name="place">The place.</param>
    /// <param name="date">Date in Universal Time.</param>
    /// <param name="minutes">Minutes from its midnight in Universal Time [min]; may lie beyond the day.</param>
    /// <returns>Height without refraction, and azimuth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The minutes are not finite.</exception>
    /// <remarks>sin h = sin φ·sin δ + cos φ·cos δ·cos H with the hour angle H = sidereal time + longitude − α.</remarks>
    [Source("Meeus1998", "ch. 12, formula 12.4, and ch. 13, formulas 13.5 and 13.6")]
    public static SunDirection At(GeographicPlace place, DateOnly date, double minutes)
    {
        var day = JulianDay(date, minutes);
        var (rightAscension, declination) = Apparent(day);
        var sidereal = 280.46061837 + (360.98564736629 * (day - J2000));
        var hour = Radians(sidereal + place.Longitude.Degrees) - rightAscension.Radians;
        var (sinLatitude, cosLatitude) = Math.SinCos(place.Latitude.Radians);
        var (sinDeclination, cosDeclination) = Math.SinCos(declination.Radians);
        var height = Math.Asin(Math.Clamp((sinLatitude * sinDeclination) + (cosLatitude * cosDeclination * Math.Cos(hour)), -1, 1));
        var fromSouth = Math.Atan2(Math.Sin(hour) * cosDeclination, (Math.Cos(hour) * sinLatitude * cosDeclination) - (sinDeclination * cosLatitude));
        return new SunDirection(Angle.FromRadians(height), Angle.FromDegrees(Turned(Degrees(fromSouth) + 180)));
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180;

    private static double Degrees(double radians) => radians * 180 / Math.PI;

    private static double Turned(double degrees)
    {
        var turned = degrees % 360;
        return turned < 0 ? turned + 360 : turned;
    }
}
