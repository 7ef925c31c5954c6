using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Planning.SetUps.DarkBackground;

/// <summary>What may be seen of a black background and its subject.</summary>
internal static class DarkSymptoms
{
    private static readonly double[] Further = [1.2, 1.4, 1.7, 2, 2.8, 4];

    /// <summary>Symptoms and what may help.</summary>
    public static IEnumerable<SymptomRule> Of(SetUpSpec setUp, ExposurePlan now)
    {
        yield return new SymptomRule(
            Symptom.BackgroundShowsUnlit,
            [.. Enumerable.Range(1, AmbientSteps.Furthest).Select(stops => AmbientSteps.From(now.Ambient, stops)).OfType<ExposureValue>()
                .Select(light => (ValueList<KitChange>)[new KitChange.Ambient(setUp.Name, light)])],
            changed => changed.AmbientLevel.Value <= -setUp.AmbientUnder.Value + 1e-6);
        yield return new SymptomRule(
            Symptom.BackgroundShowsLit,
            [.. Further.Select(share => (ValueList<KitChange>)[new KitChange.Background(setUp.Name, Rounded(setUp.BackgroundDistance * share))])],
            changed => changed.BackgroundLevel!.Value.Value <= now.BackgroundLevel!.Value.Value - (1.0 / 3));
        if (now.Lights.FirstOrDefault(light => light.Role == LightRole.Rim) is { } rim)
        {
            yield return new SymptomRule(
                Symptom.OutlineLost,
                [[new KitChange.RimLevel(setUp.Name, setUp.RimLevel + rim.DialStep)]],
                changed => changed.Lights.First(light => light.Place == rim.Place).Budget.Total.Value > rim.Budget.Total.Value + (rim.DialStep.Value / 2));
        }

        foreach (var rule in CommonSymptoms.SubjectLevel(now))
        {
            yield return rule;
        }
    }

    private static Length Rounded(Length distance) => Length.FromMeters(Math.Round(distance.Meters, 1));
}
