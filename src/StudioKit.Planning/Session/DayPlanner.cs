using StudioKit.Kits;
using StudioKit.Physics;
using StudioKit.Physics.Daylight;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>Date, place and session → the day hour by hour.</summary>
internal static class DayPlanner
{
    private const int Hour = 60;
    private const int Day = 24 * Hour;

    private static readonly SkyState[] Skies = [SkyState.Sun, SkyState.Cloud, SkyState.Shade];

    // Darker than this no kit is planned for.
    private static readonly ExposureValue Dark = new(-6);

    /// <summary>The day; none where the kit has no date or place.</summary>
    public static DayPlan? Of(KitSpec kit, SessionPlan? session)
    {
        if (SunPlace.Of(kit.Site) is not { } place)
        {
            return null;
        }

        ValueList<SetUpWindow> setUps = [.. (session?.Blocks ?? []).SelectMany(block => block.SetUps).DistinctBy(setUp => setUp.SetUp)];
        var last = (session?.Blocks ?? []).Select(block => block.Hours?.Chosen?.To ?? 0).Append(Day - Hour).Max();
        return new DayPlan
        {
            Date = place.Date,
            Place = place.Place,
            ClockOffset = kit.Site.ClockOffset,
            ShadeLoss = kit.Site.ShadeLoss,
            IsOffsetGiven = kit.Site.UtcOffset is not null,
            Events = [.. Events(place).OrderBy(of => of.Minute)],
            Hours = [.. Enumerable.Range(0, (last / Hour) + 1).Select(hour => HourOf(place, hour * Hour, setUps)).OfType<DayHour>()],
        };
    }

    private static IEnumerable<SunEvent> Events(SunPlace place)
    {
        foreach (var (height, up, down) in new[]
        {
            (SunCrossings.CivilTwilight, SunEventKind.Daybreak, SunEventKind.Nightfall),
            (SunCrossings.Horizon, SunEventKind.Sunrise, SunEventKind.Sunset),
        })
        {
            foreach (var (minute, rises) in place.Passes(height))
            {
                yield return Event(place, rises ? up : down, minute);
            }
        }

        yield return Event(place, SunEventKind.TrueNoon, place.Noon());
    }

    private static SunEvent Event(SunPlace place, SunEventKind kind, double minute) => new(kind, (int)Math.Floor(minute + 0.5), place.SunAt(minute).SeenHeight);

    private static DayHour? HourOf(SunPlace place, int minute, ValueList<SetUpWindow> setUps)
    {
        var sun = place.SunAt(minute);
        if (place.Light(sun, SkyState.Sun) is not { } open || open.Typical.AtIso100 < Dark.AtIso100)
        {
            return null;
        }

        ValueList<ExpectedDaylight> lights = [.. Skies.Select(sky => place.Light(sun, sky)!.Value)];
        return new DayHour
        {
            Minute = minute,
            Height = sun.SeenHeight,
            Azimuth = sun.Azimuth,
            ShadowOverHeight = sun.SeenHeight > Angle.Zero ? SunShadow.LengthOverHeight(sun.SeenHeight) : null,
            ShadowDirection = SunShadow.Direction(sun.Azimuth),
            Lights = lights,
            SetUps = [.. setUps.Where(setUp => setUp.Clock?.Holds(minute % Day) ?? true).Select(setUp => Fitting(setUp, lights)).Where(fitting => fitting.Skies.Count > 0)],
        };
    }

    private static FittingSetUp Fitting(SetUpWindow setUp, ValueList<ExpectedDaylight> lights) =>
        new(setUp.SetUp, [.. Skies.Where(sky => setUp.Light.Holds(lights[(int)sky].Typical))]);
}
