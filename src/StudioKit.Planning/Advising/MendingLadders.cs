using StudioKit.Kits.Cameras;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Planning.Changes;
using StudioKit.Planning.SetUps;
using UnitsNet;

namespace StudioKit.Planning.Advising;

/// <summary>Looks for the cheapest changes that make an exposure work, with what lens, camera, flash and bag have, by planning each.</summary>
internal sealed class MendingLadders(Replanner replanner, ExposurePlan now)
{
    private const int Most = 3;

    // Three metres in steps of five centimetres; from further off a flash is not fetched step by step.
    private const int MostSteps = 60;
    private const double NearestCentimetres = 15;
    // Further behind an upright sheet a flash stands in the next bush (common practice, no source).
    private const double FurthestBehindCentimetres = 150;

    private const double FurthestCentimetres = 300;

    private readonly SetUpSpec _setUp = replanner.SetUpOf(now);

    /// <summary>One change of each kind that will do, the kinds in the order of what they cost.</summary>
    public IReadOnlyList<Advice> Cheapest()
    {
        var found = new List<Advice>();
        foreach (var advice in Ladders().Select(First).OfType<Advice>())
        {
            if (!found.Exists(other => ComesToTheSame(other.Promise, advice.Promise)))
            {
                found.Add(advice);
            }

            if (found.Count == Most)
            {
                break;
            }
        }

        return found;
    }

    // Two ways to the same settings are one piece of advice; a steadier camera leaves the settings and takes the smear.
    private static bool ComesToTheSame(Promise one, Promise other) => one.IsSetLike(other) && one.SmearPixels == other.SmearPixels;

    // The smallest step that works; where none of the kind does, the smallest that brings it to the edge.
    private Advice? First(IEnumerable<ValueList<KitChange>> ladder)
    {
        Advice? edge = null;
        foreach (var changes in ladder)
        {
            if (replanner.Plan(now, changes) is not { } promise)
            {
                continue;
            }

            if (promise.Verdict.Verdict == Verdict.Works)
            {
                return new Advice(changes, promise);
            }

            edge ??= promise.Verdict.Verdict < now.Verdict.Verdict ? new Advice(changes, promise) : null;
        }

        return edge;
    }

    private IEnumerable<IEnumerable<ValueList<KitChange>>> Ladders()
    {
        foreach (var light in now.Lights)
        {
            yield return Nearer(light).Take(MostSteps).Select(Single);
            yield return Further(light).Take(MostSteps).Select(Single);
        }

        yield return BackgroundFurther().Select(Single);
        yield return now.ShowsHabitat ? [] : CommonSymptoms.Shaded(replanner.Kit, _setUp);
        yield return Shade().Select(Single);
        yield return _setUp.Filter is null ? [] : [[new KitChange.Before(now.SetUp, null)]];
        yield return Faster().Select(Single);
        yield return ShorterWithIso();
        yield return CommonSymptoms.Steadied(replanner.Kit, _setUp);
        yield return Apertures(ThirdStopSeries.Brighter).Select(Single);
        yield return Apertures(ThirdStopSeries.Darker).Select(Single);
        yield return NeutralDensity().Select(Single);
        yield return Modifiers().Select(Single);
        yield return SecondBelow().Select(Single);
        yield return FromFurther(ShorterWithIso());
        yield return FromFurther(CommonSymptoms.Steadied(replanner.Kit, _setUp));
    }

    private static ValueList<KitChange> Single(KitChange change) => [change];

    private IEnumerable<KitChange> Nearer(LightPlan light)
    {
        for (var cm = (Math.Ceiling(light.Distance.Centimeters / 5) * 5) - 5; cm >= NearestCentimetres; cm -= 5)
        {
            yield return new KitChange.Move(now.SetUp, light.Place, Length.FromCentimeters(cm));
        }
    }

    private IEnumerable<KitChange> Further(LightPlan light)
    {
        var (step, furthest) = light.Role switch
        {
            LightRole.Below => (5, replanner.PanelHeight.Centimeters),
            LightRole.Behind => (5, FurthestBehindCentimetres),
            _ => (10, FurthestCentimetres),
        };
        for (var cm = (Math.Floor(light.Distance.Centimeters / step) * step) + step; cm <= furthest; cm += step)
        {
            yield return new KitChange.Move(now.SetUp, light.Place, Length.FromCentimeters(cm));
        }
    }

    private IEnumerable<KitChange> BackgroundFurther()
    {
        for (var m = 0.5; now.BackgroundLevel is not null && m <= 5; m += 0.5)
        {
            if (m > _setUp.BackgroundDistance.Meters)
            {
                yield return new KitChange.Background(now.SetUp, Length.FromMeters(m));
            }
        }
    }

    private IEnumerable<KitChange> Shade() => now.ShowsHabitat
        ? []
        : from stops in Enumerable.Range(1, 6)
          let light = AmbientSteps.From(now.Ambient, -stops)
          where light is not null
          select new KitChange.Shade(now.SetUp, light.Value, new Stops(stops));

    // A faster speed makes every flash weaker, and so shorter and sooner ready.
    private IEnumerable<KitChange> Faster() => Isos().Select(iso => new KitChange.Iso(now.SetUp, iso));

    private IEnumerable<ValueList<KitChange>> ShorterWithIso()
    {
        var shutter = now.Shutter;
        foreach (var iso in now.ShowsHabitat ? Isos() : [])
        {
            shutter = ThirdStopSeries.Darker(shutter);
            if (shutter.Seconds >= replanner.Kit.SyncOf(_setUp).Seconds * 0.99)
            {
                yield return [new KitChange.Shutter(now.SetUp, shutter), new KitChange.Iso(now.SetUp, iso)];
            }
        }
    }

    // What steadies the picture leaves a fill too strong that stands at its lowest power, and a faster speed makes it worse: it moves back as well.
    private IEnumerable<ValueList<KitChange>> FromFurther(IEnumerable<ValueList<KitChange>> steadier) =>
        from changes in now.Lights.Count == 0 || !now.ShowsHabitat ? [] : steadier
        from share in (double[])[1.4, 2, 2.8]
        select (ValueList<KitChange>)[.. changes, .. now.Lights.Select(light => new KitChange.Move(now.SetUp, light.Place, Length.FromCentimeters(Math.Round(light.Distance.Centimeters * share))))];

    private IEnumerable<IsoSpeed> Isos()
    {
        var highest = ThirdStopSeries.FromMark(replanner.Kit.Camera.HighestIso).Value;
        for (var iso = ThirdStopSeries.Brighter(now.Iso); iso.Value <= highest * 1.01; iso = ThirdStopSeries.Brighter(iso))
        {
            yield return iso;
        }
    }

    private IEnumerable<KitChange> Apertures(Func<FNumber, FNumber> next)
    {
        var lens = replanner.Kit.Lenses.First(candidate => candidate.Name == now.Framing.Lens);
        var (widest, smallest) = (ThirdStopSeries.FromMark(lens.WidestAperture).Value, ThirdStopSeries.FromMark(lens.SmallestAperture).Value);
        for (var aperture = next(now.Aperture); aperture.Value >= widest * 0.99 && aperture.Value <= smallest * 1.01; aperture = next(aperture))
        {
            yield return new KitChange.Aperture(now.SetUp, aperture);
        }
    }

    private IEnumerable<KitChange> NeutralDensity() => replanner.Kit.Accessories.Filters
        .Where(filter => filter.Kind == FilterKind.NeutralDensity && filter.Name != now.Filter)
        .OrderBy(filter => filter.Loss.Value)
        .Select(filter => new KitChange.Before(now.SetUp, filter.Name));

    // What is before the flash of a sheet spreads its light over it: each dome or diffuser of the kit, or none.
    private IEnumerable<KitChange> Modifiers() => now.Lights.Where(light => light.Role.IsBackground()).SelectMany(light => replanner.Kit.Modifiers
        .Select(modifier => modifier.Name).Append(null).Where(name => name != light.Modifier)
        .Select(name => new KitChange.Modify(now.SetUp, light.Place, name)));

    // A flash that the set-up leaves in the bag, beside the one below: to either side, then beyond.
    private IEnumerable<KitChange> SecondBelow() =>
        from below in _setUp.LightsOf(LightRole.Below).Take(1)
        from spare in replanner.Kit.Flashes
        where _setUp.Lights.All(light => light.Flash != spare.Name)
        from aside in (double[])[0.25, -0.25]
        from across in (bool[])[true, false]
        select new KitChange.Add(now.SetUp, new LightSpec
        {
            Flash = spare.Name,
            Role = LightRole.Below,
            Distance = below.Distance,
            OffsetRight = below.OffsetRight + (across ? Length.FromMeters(aside) : Length.Zero),
            OffsetBack = below.OffsetBack + (across ? Length.Zero : Length.FromMeters(aside)),
        });
}
