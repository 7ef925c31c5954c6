using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.Session;

/// <summary>Light, wind and ground of the place.</summary>
public sealed record SiteSpec
{
    /// <summary>Name of the place.</summary>
    public string Name { get; init; } = "";

    /// <summary>Date that the day is planned for; none where the sun is left out.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Latitude, north positive.</summary>
    public Angle? Latitude { get; init; }

    /// <summary>Longitude, east positive.</summary>
    public Angle? Longitude { get; init; }

    /// <summary>How far the clocks there are ahead of Universal Time, summer time counted; the longitude's whole hours where the kit gives none.</summary>
    public Duration? UtcOffset { get; init; }

    /// <summary>How far the clocks are taken to be ahead of Universal Time.</summary>
    public Duration ClockOffset => UtcOffset ?? Duration.FromHours(Math.Round((Longitude?.Degrees ?? 0) / 15, MidpointRounding.AwayFromZero));

    /// <summary>How much darker the shade used there is than open shade under a clear sky: that of an umbrella, of trees; 0 stops or more.</summary>
    public Stops ShadeLoss { get; init; }

    /// <summary>Ambient light on the subject, e.g. <c>EV 12</c> or <c>10000 lx</c>.</summary>
    public ExposureValue Ambient { get; init; } = new(12);

    /// <summary>Mean wind at its strongest, e.g. <c>Beaufort 4</c> or <c>6 m/s</c>.</summary>
    public Speed Wind { get; init; } = Speed.FromMetersPerSecond(5.4);

    /// <summary>Gust over mean wind [1]; 1 where the wind given is the gust.</summary>
    public double GustFactor { get; init; } = Physics.Structure.Wind.GustFactor;

    /// <summary>Slope of the ground.</summary>
    public Angle Slope { get; init; } = Angle.FromDegrees(5);

    /// <summary>Which way the ground falls, from straight away from the camera towards the right; none where nobody said.</summary>
    public Angle? Downhill { get; init; }

    /// <summary>Diffuse reflectance of the ground under the panel [1]; 0 to 1.</summary>
    public double GroundReflectance { get; init; } = 0.1;

    /// <summary>Friction between feet and ground: the pull that drags the studio, over its weight [1]; &gt; 0 (common practice, no source).</summary>
    public double GroundFriction { get; init; } = 0.4;

    /// <summary>Air temperature of a warm day.</summary>
    public Temperature Temperature { get; init; } = Temperature.FromDegreesCelsius(25);

    /// <summary>How much warmer than the air the sun makes sheet and pipes (common practice, no source).</summary>
    public TemperatureDelta SunWarming { get; init; } = TemperatureDelta.FromKelvins(10);

    /// <summary>Speed at which a hand-held camera sways against the subject.</summary>
    public Speed HandSpeed { get; init; } = Speed.FromMillimetersPerSecond(5);

    /// <summary>Guide numbers are quoted with help from a room's walls; outdoors they lose this much, negative stops.</summary>
    public Stops OutdoorCorrection { get; init; } = new(-0.5);
}
