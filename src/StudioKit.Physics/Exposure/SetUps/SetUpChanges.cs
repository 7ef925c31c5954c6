using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.Series;
using UnitsNet;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>Looks for the cheapest changes that make an impossible set-up work, by solving each again.</summary>
internal static class SetUpChanges
{
    private const double NearestCentimetres = 15;
    private const double FurthestMetres = 3;

    public static IReadOnlyList<SetUpChange> Cheapest(SetUpCase setUp, Func<SetUpCase, SetUpResult> solve, int most)
    {
        Guard.Between(most, 1, 100);
        var now = solve(setUp);
        return now.Works
            ? []
            : [.. Ladders(setUp, now).Select(ladder => FirstThatWorks(ladder, solve)).OfType<SetUpChange>().Take(most)];
    }

    private static SetUpChange? FirstThatWorks(
        IEnumerable<(string Change, SetUpCase Changed)> ladder, Func<SetUpCase, SetUpResult> solve)
    {
        foreach (var (change, changed) in ladder)
        {
            var result = solve(changed);
            if (result.Works)
            {
                return new SetUpChange($"{change}: {Worded(result)}", result);
            }
        }

        return null;
    }

    private static string Worded(SetUpResult result)
    {
        var powers = string.Join(", ", result.Lights.Select(light => $"{light.Flash.Name} {light.Power.Mark}"));
        return $"{result.Camera.Aperture}, {result.Camera.Shutter}, {result.Camera.Iso}, {powers}";
    }

    // Each ladder climbs from the smallest step of one kind of change; the kinds stand in the order of what they cost.
    private static IEnumerable<IEnumerable<(string Change, SetUpCase Changed)>> Ladders(SetUpCase setUp, SetUpResult now)
    {
        foreach (var flash in setUp.Flashes)
        {
            yield return Nearer(setUp, flash);
            yield return Further(setUp, flash);
        }

        yield return AllNearer(setUp);
        yield return BackgroundFurther(setUp);
        yield return Shade(setUp);
        yield return WithoutFilter(setUp);
        yield return Slower(setUp);
        yield return Apertures(setUp, now, -1, "open up");
        yield return Apertures(setUp, now, 1, "stop down");
        yield return NeutralDensity(setUp);
        yield return HigherIso(setUp);
    }

    private static IEnumerable<(string Change, SetUpCase Changed)> Nearer(SetUpCase setUp, FlashCase flash)
    {
        for (var cm = (Math.Ceiling(flash.Distance.Centimeters / 5) * 5) - 5; cm >= NearestCentimetres; cm -= 5)
        {
            yield return Moved(setUp, flash, Length.FromCentimeters(cm));
        }
    }

    private static IEnumerable<(string Change, SetUpCase Changed)> Further(SetUpCase setUp, FlashCase flash)
    {
        for (var cm = (Math.Floor(flash.Distance.Centimeters / 10) * 10) + 10; cm <= FurthestMetres * 100; cm += 10)
        {
            yield return Moved(setUp, flash, Length.FromCentimeters(cm));
        }
    }

    private static (string Change, SetUpCase Changed) Moved(SetUpCase setUp, FlashCase flash, Length distance) => (
        FormattableString.Invariant($"move the {flash.Name} to {distance.Centimeters:0} cm"),
        setUp.WithFlashes(other => ReferenceEquals(other, flash) ? other with { Distance = distance } : other));

    private static IEnumerable<(string Change, SetUpCase Changed)> AllNearer(SetUpCase setUp)
    {
        if (setUp.Flashes.Count < 2)
        {
            yield break;
        }

        for (var percent = 90; percent >= 40; percent -= 10)
        {
            var share = percent / 100.0;
            yield return (
                FormattableString.Invariant($"move every flash to {percent} % of its distance"),
                setUp.WithFlashes(flash => flash with { Distance = flash.Distance * share }));
        }
    }

    private static IEnumerable<(string Change, SetUpCase Changed)> BackgroundFurther(SetUpCase setUp)
    {
        for (var m = 0.5; setUp is DarkBackgroundCase dark && m <= 5; m += 0.5)
        {
            if (m > dark.BackgroundDistance.Meters)
            {
                yield return (
                    FormattableString.Invariant($"place the subject {m:0.0} m before its background"),
                    dark with { BackgroundDistance = Length.FromMeters(m) });
            }
        }
    }

    private static IEnumerable<(string Change, SetUpCase Changed)> Shade(SetUpCase setUp)
    {
        for (var stops = 1; setUp is WhiteBackgroundCase or DarkBackgroundCase && stops <= 6; stops++)
        {
            yield return (
                $"shade the place by {ThirdStopText.Count(stops)}",
                setUp with { Ambient = new ExposureValue(setUp.Ambient.AtIso100 - stops) });
        }
    }

    private static IEnumerable<(string Change, SetUpCase Changed)> WithoutFilter(SetUpCase setUp)
    {
        if (setUp.Camera.FilterLoss.Value > 0)
        {
            yield return ("take the filter off", setUp with { Camera = setUp.Camera with { FilterLoss = default } });
        }
    }

    private static IEnumerable<(string Change, SetUpCase Changed)> Slower(SetUpCase setUp)
    {
        var shutter = setUp.Limits.LongestShutter ?? setUp.Camera.Shutter;
        for (var thirds = 1; setUp is LowLightFillCase or DaylightFillCase && thirds <= 9; thirds++)
        {
            shutter = ThirdStopSeries.Brighter(shutter);
            yield return (
                $"steady the camera and wait for a lull, to allow {shutter}", setUp with { Limits = setUp.Limits with { LongestShutter = shutter } });
        }
    }

    private static IEnumerable<(string Change, SetUpCase Changed)> Apertures(
        SetUpCase setUp, SetUpResult now, int direction, string verb)
    {
        var aperture = now.Camera.Aperture;
        for (var thirds = 1; thirds <= 12; thirds++)
        {
            aperture = direction > 0 ? ThirdStopSeries.Darker(aperture) : ThirdStopSeries.Brighter(aperture);
            yield return ($"{verb} to {aperture}", setUp with { Camera = setUp.Camera.WithAperture(aperture), Apertures = [] });
        }
    }

    private static IEnumerable<(string Change, SetUpCase Changed)> NeutralDensity(SetUpCase setUp)
    {
        for (var stops = 1; stops <= 6; stops++)
        {
            yield return (
                $"put a neutral-density filter of {ThirdStopText.Count(stops)} before the lens",
                setUp with { Camera = setUp.Camera with { FilterLoss = setUp.Camera.FilterLoss + new Stops(stops) } });
        }
    }

    private static IEnumerable<(string Change, SetUpCase Changed)> HigherIso(SetUpCase setUp)
    {
        var iso = setUp.Limits.HighestIso;
        for (var thirds = 1; thirds <= 9; thirds++)
        {
            iso = ThirdStopSeries.Brighter(iso);
            yield return ($"accept {iso}", setUp with { Limits = setUp.Limits with { HighestIso = iso } });
        }
    }
}
