using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Daylight;
using UnitsNet;

namespace StudioKit.Planning.Sheltering;

/// <summary>The sun over a site while a set-up is photographed.</summary>
internal static class PlaceSun
{
    private const int Day = 1440;
    private const int Step = 5;

    /// <summary>Height at which it is seen, halfway through the set-up's hours or at its highest where it has none; none without a date and a place.</summary>
    public static Angle? Height(KitSpec kit, SetUpSpec setUp)
    {
        if (kit.Site is not { Date: { } date, Latitude: { } latitude, Longitude: { } longitude } site)
        {
            return null;
        }

        var place = new GeographicPlace(latitude, longitude);
        return setUp.Clock is { } hours
            ? At(hours.From + (hours.Length.Minutes / 2))
            : Enumerable.Range(0, Day / Step).Select(slot => At(slot * Step)).MaxBy(height => height.Radians);

        Angle At(double minute) => SolarPosition.At(place, date, minute - site.ClockOffset.Minutes).SeenHeight;
    }
}
