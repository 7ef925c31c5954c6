using StudioKit.Physics;
using StudioKit.Physics.Daylight;
using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>Sun and light at one time.</summary>
public sealed record DayHour
{
    /// <summary>Minutes from midnight of the date by the clock [1]; over 1440 on the day after.</summary>
    public required int Minute { get; init; }

    /// <summary>Height of the sun with refraction.</summary>
    public required Angle Height { get; init; }

    /// <summary>Direction of the sun, from north through east.</summary>
    public required Angle Azimuth { get; init; }

    /// <summary>Length of a shadow over the height of what throws it [1]; none with the sun at the horizon or under it.</summary>
    public double? ShadowOverHeight { get; init; }

    /// <summary>Direction in which shadows fall, from north through east.</summary>
    public required Angle ShadowDirection { get; init; }

    /// <summary>Light expected in sun, under clouds and in shade, in this order.</summary>
    public required ValueList<ExpectedDaylight> Lights { get; init; }

    /// <summary>Set-ups whose window the mean light of a sky lies in, at hours that they allow.</summary>
    public required ValueList<FittingSetUp> SetUps { get; init; }
}
