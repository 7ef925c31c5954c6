using StudioKit.Kits.Session;
using StudioKit.Physics.Daylight;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>A place on one date, with its clock.</summary>
internal sealed record SunPlace(GeographicPlace Place, DateOnly Date, double OffsetMinutes, double ShadeLoss)
{
    private const int Coarse = 10;

    /// <summary>The place of a site on its date; none where the site lacks one of them.</summary>
    public static SunPlace? Of(SiteSpec site) => site is { Date: { } date, Latitude: { } latitude, Longitude: { } longitude }
        ? new SunPlace(new GeographicPlace(latitude, longitude), date, site.ClockOffset.Minutes, site.ShadeLoss.Value)
        : null;

    /// <summary>The sun at a time of the place's clock.</summary>
    /// <param name="minute">Minutes from midnight of the date [1].</param>
    public SunDirection SunAt(double minute) => SolarPosition.At(Place, Date, minute - OffsetMinutes);

    /// <summary>Light to expect under a sky; none in the dark.</summary>
    public ExpectedDaylight? Light(SunDirection sun, SkyState sky)
    {
        if (sun.SeenHeight < DaylightIlluminance.Lowest)
        {
            return null;
        }

        var light = DaylightIlluminance.Expected(sun.SeenHeight, sky);
        return sky == SkyState.Shade ? new(Shaded(light.Typical), Shaded(light.Darkest), Shaded(light.Brightest)) : light;

        ExposureValue Shaded(ExposureValue open) => new(open.AtIso100 - ShadeLoss);
    }

    /// <summary>When the sun passes a height on the date, by the place's clock.</summary>
    public IReadOnlyList<(double Minute, bool Rises)> Passes(Angle height) => [.. SunCrossings.Of(Place, Date, -OffsetMinutes, 1440 - OffsetMinutes, height)
        .Select(pass => (pass.Minute + OffsetMinutes, pass.Rises))];

    /// <summary>Minute of the date at which the sun stands highest.</summary>
    public int Noon()
    {
        var near = Highest(Enumerable.Range(0, 1440 / Coarse).Select(step => step * Coarse));
        return Highest(Enumerable.Range(near - Coarse, (2 * Coarse) + 1));
    }

    private int Highest(IEnumerable<int> minutes) => minutes.MaxBy(minute => SunAt(minute).Height.Radians);
}
