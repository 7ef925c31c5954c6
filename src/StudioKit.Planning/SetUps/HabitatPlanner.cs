using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.SetUps;

/// <summary>The subject where it sits, exposed by the light of the place and filled by flash.</summary>
internal abstract class HabitatPlanner : SetUpPlanner
{
    public override bool WhereItSits => true;

    public override bool ShowsHabitat => true;

    public override IEnumerable<SymptomRule> Symptoms(SetUpSpec setUp, ExposurePlan now)
    {
        yield return Scene(Symptom.SceneBright, setUp, now, 1);
        yield return Scene(Symptom.SceneDark, setUp, now, -1);
        if (now.Lights.Count > 0)
        {
            var step = now.Lights[0].DialStep;
            yield return Fill(Symptom.FlashShows, setUp, now, -step);
            yield return Fill(Symptom.SubjectDark, setUp, now, step);
        }
    }

    /// <summary>Habitat and subject follow the light of the place and the flash, each by its share.</summary>
    public override Stops Uncertainty(SetUpResult result, LightBudget main, Stops ambient) => AmbientWeight.Uncertainty(result, main, ambient);

    public override ExposureVerdict Chances(SetUpAtFraming at, SetUpResult result, Stops uncertainty) =>
        ExposureVerdict.Kept with { FirstFrame = NearEnough(result.AmbientLevel, uncertainty) };

    // The place is a stop brighter or darker than it was metered, which is what the frame shows; the plan says what gives way first.
    private static SymptomRule Scene(Symptom seen, SetUpSpec setUp, ExposurePlan now, double stops) => new(
        seen,
        AmbientSteps.From(now.Ambient, stops) is { } light ? [[new KitChange.Ambient(setUp.Name, light)]] : [],
        changed => CommonSymptoms.KeepsTheScene(now, changed));

    private static SymptomRule Fill(Symptom seen, SetUpSpec setUp, ExposurePlan now, Stops by) => new(
        seen,
        [[new KitChange.FillLevel(setUp.Name, FillLevels.Of(setUp, now.ShelterLoss) + by)]],
        changed => (changed.Lights[0].Power.Fraction - now.Lights[0].Power.Fraction) * by.Value > 0);
}
