using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Planning.Changes;
using StudioKit.Planning.SetUps;

namespace StudioKit.Planning.Advising;

/// <summary>What to set from four stops brighter than planned to four darker; neighbours that ask for the same are one step.</summary>
internal sealed class LightTable(Replanner replanner, ExposurePlan now)
{
    /// <summary>The steps, from brightest to darkest.</summary>
    public IReadOnlyList<LightStep> Steps()
    {
        var steps = new List<LightStep>();
        foreach (var single in Singles())
        {
            if (steps.Count > 0 && AsksForTheSame(steps[^1].Advice.Promise, single.Advice.Promise))
            {
                steps[^1] = Joined(steps[^1], single);
            }
            else
            {
                steps.Add(single);
            }
        }

        return [.. steps.Select(step => step with { Shade = ShadeFor(step, steps) })];
    }

    private IEnumerable<LightStep> Singles()
    {
        for (var stops = AmbientSteps.Furthest; stops >= -AmbientSteps.Furthest; stops--)
        {
            if (AmbientSteps.From(now.Ambient, stops) is { } ambient && Single(ambient) is { } step)
            {
                yield return step with { IsPlanned = stops == 0 };
            }
        }
    }

    private LightStep? Single(ExposureValue ambient)
    {
        ValueList<KitChange> changes = [new KitChange.Ambient(now.SetUp, ambient)];
        if (replanner.Plan(now, changes) is not { } planned)
        {
            return null;
        }

        var reads = Reads(ambient);
        return new LightStep
        {
            Brightest = ambient,
            Darkest = ambient,
            ReadsInBrightest = reads,
            ReadsInDarkest = reads,
            IsPlanned = false,
            Advice = new Advice(changes, planned),
            Steadied = planned.Verdict.Verdict == Verdict.Works ? null : Steadied(changes, planned),
        };
    }

    private Advice? Steadied(ValueList<KitChange> changes, ExposurePlan asItRests)
    {
        if (CommonSymptoms.Steadied(replanner.Kit, replanner.SetUpOf(now)).FirstOrDefault() is not { } rest)
        {
            return null;
        }

        ValueList<KitChange> both = [.. changes, .. rest];
        return replanner.Plan(now, both) is { } planned && planned.Verdict.Verdict < asItRests.Verdict.Verdict ? new Advice(both, planned) : null;
    }

    // A meter before the scene knows nothing of what stands before the sensor; it is set to the card's own f-number and ISO.
    private ShutterSpeed Reads(ExposureValue ambient) => ThirdStopSeries.Nearest(LightMeter.ShutterFor(ambient, now.Aperture, now.Iso));

    private static LightStep Joined(LightStep brighter, LightStep darker)
    {
        var kept = darker.IsPlanned ? darker : brighter;
        return kept with
        {
            Brightest = brighter.Brightest,
            Darkest = darker.Darkest,
            ReadsInBrightest = brighter.ReadsInBrightest,
            ReadsInDarkest = darker.ReadsInDarkest,
        };
    }

    // The nearest darker light in which it works: shade takes away that much.
    private static Stops? ShadeFor(LightStep step, List<LightStep> steps) =>
        step.Advice.Promise.IsUsable || step.Steadied is not null ? null
        : steps.SkipWhile(other => !ReferenceEquals(other, step)).Skip(1).FirstOrDefault(other => other.Advice.Promise.IsUsable) is { } works
            ? new Stops(step.Brightest.AtIso100 - works.Brightest.AtIso100)
            : null;

    private static bool AsksForTheSame(Promise one, Promise other) => one.Verdict.Verdict == other.Verdict.Verdict && one.IsSetLike(other);
}
