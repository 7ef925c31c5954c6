using StudioKit.Kits.Quantities;
using StudioKit.Kits.Session;
using StudioKit.Physics.Daylight;
using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Session;

/// <summary>Sun and light through a day and the night after it, every five minutes.</summary>
/// <remarks>
/// Stretches of time are found to five minutes, rounded inwards. One that runs over midnight counts once, in the evening of the date. Without a date and a place every light is
/// there at every hour, and only hours by the clock count.
/// </remarks>
internal sealed class DayCourse
{
    private const int Day = 1440;
    private const int Slot = 5;
    private const int Slots = 2 * Day / Slot;

    private static readonly SkyState?[] EverySky = [SkyState.Sun, SkyState.Cloud, SkyState.Shade];

    // The darkest that a kit can be planned for; all that is darker counts as it.
    private static readonly ExposureValue Dark = new(-6);

    private static readonly DayCourse Sunless = new(null);

    // Light and exposures change far more often than the day does.
    private static readonly Kept<SunPlace, DayCourse> Known = new(4);

    private readonly SunDirection[]? _suns;
    private readonly ExposureValue[]?[] _light;

    private DayCourse(SunPlace? place)
    {
        _suns = place is null ? null : [.. Enumerable.Range(0, Slots + 1).Select(slot => place.SunAt(slot * Slot))];
        _light = _suns is null ? [null] : Array.ConvertAll(EverySky, sky => (ExposureValue[]?)Array.ConvertAll(_suns, sun => place!.Light(sun, sky!.Value)?.Typical is { } light && light.AtIso100 > Dark.AtIso100 ? light : Dark));
    }

    /// <summary>Whether the sun is looked at.</summary>
    public bool KnowsTheSun => _suns is not null;

    /// <summary>The course of a site's day; one without a sun where it has no date or place.</summary>
    public static DayCourse Of(SiteSpec site) => SunPlace.Of(site) is { } place ? Known.Get(place, static of => new DayCourse(of)) : Sunless;

    /// <summary>Whether the time at which something is about can be told.</summary>
    public bool Knows(ActiveTime active) => active.Hours is not null || KnowsTheSun;

    /// <summary>Stretches of the day with light in a range, at hours of the clock, while everything is about.</summary>
    /// <param name="light">The light.</param>
    /// <param name="clock">Hours; any where there are none.</param>
    /// <param name="active">When each is about.</param>
    public IReadOnlyList<LightTime> Times(LightRange light, ClockRange? clock, IReadOnlyList<ActiveTime> active)
    {
        var free = Free(clock, active);
        return [.. Enumerable.Range(0, _light.Length).SelectMany(sky => Runs(KnowsTheSun ? EverySky[sky] : null, slot => free[slot] && IsLit(sky, slot, light)))];
    }

    /// <summary>From the darkest to the brightest mean light while hours and subjects allow it.</summary>
    public LightRange? Expected(ClockRange? clock, IReadOnlyList<ActiveTime> active)
    {
        var free = Free(clock, active);
        var found = _light.OfType<ExposureValue[]>()
            .SelectMany(sky => sky.Take(Slots).Where((_, slot) => free[slot])).OrderBy(value => value.AtIso100).ToList();
        return found.Count == 0 ? null : new LightRange(found[0], found[^1]);
    }

    private bool[] Free(ClockRange? clock, IReadOnlyList<ActiveTime> active)
    {
        var free = new bool[Slots];
        for (var slot = 0; slot < Slots; slot++)
        {
            free[slot] = Within(clock, slot) && active.All(time => IsAbout(time, slot));
        }

        return free;
    }

    private bool IsLit(int sky, int slot, LightRange light) =>
        _light[sky] is not { } lights || (light.Holds(lights[slot]) && light.Holds(lights[slot + 1]));

    private bool IsAbout(ActiveTime time, int slot) => time.Part is { } part
        ? _suns is null || (IsIn(part, _suns[slot]) && IsIn(part, _suns[slot + 1]))
        : Within(time.Hours, slot);

    private static bool IsIn(DayPart part, SunDirection sun) => part switch
    {
        DayPart.Day => sun.Height >= SunCrossings.Horizon,
        DayPart.Night => sun.Height < SunCrossings.CivilTwilight,
        _ => sun.Height < SunCrossings.Horizon && sun.Height >= SunCrossings.NauticalTwilight && sun.Sinks == (part == DayPart.Dusk),
    };

    private static bool Within(ClockRange? hours, int slot) => hours is null || (hours.Holds(slot * Slot % Day) && hours.Holds(((slot * Slot) + Slot - 1) % Day));

    // Over two days, so that a night is found whole.
    private static IEnumerable<LightTime> Runs(SkyState? sky, Func<int, bool> allowed)
    {
        var runs = new List<LightTime>();
        for (var slot = 0; slot < Slots; slot++)
        {
            if (!allowed(slot))
            {
                continue;
            }

            var begin = slot;
            while (slot < Slots && allowed(slot))
            {
                slot++;
            }

            runs.Add(new LightTime(sky, begin * Slot, slot * Slot));
        }

        var cameOver = runs.Exists(run => run is { From: > 0 and < Day, To: > Day });
        return runs.Where(run => run.From < Day && !(cameOver && run.From == 0)).Select(run => run with { To = Math.Min(run.To, run.From + Day) });
    }
}
