using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine.Telling;

/// <summary>What a card asks for in other light, stop by stop.</summary>
internal static class SceneLightTelling
{
    // As far as the card's own table goes.
    private const int Furthest = 4;

    private const double Same = 1e-6;

    public static IReadOnlyList<SceneLightStep> Of(ExposurePlan now, IReadOnlyList<LightStep> steps) =>
    [
        .. from stops in Enumerable.Range(-Furthest, (2 * Furthest) + 1)
           let there = now.Ambient.AtIso100 + stops
           let step = steps.FirstOrDefault(step => step.Darkest.AtIso100 <= there + Same && there <= step.Brightest.AtIso100 + Same)
           where step is not null
           select new SceneLightStep(stops, Words(stops, new ExposureValue(there)), Reads(now, step), LightStepText.Then(now, step), CardTelling.StandingOf(step.Advice.Promise.Verdict)),
    ];

    private static string Words(int stops, ExposureValue light)
    {
        var change = stops switch
        {
            0 => "as planned",
            > 0 => $"{AdviceText.Amount(new Stops(stops))} brighter",
            _ => $"{AdviceText.Amount(new Stops(-stops))} darker, cloudier",
        };
        return $"{change}: {AmbientText.Of(light)}";
    }

    private static string Reads(ExposurePlan now, LightStep step)
    {
        var (brightest, darkest) = (step.ReadsInBrightest.Mark, step.ReadsInDarkest.Mark);
        return $"{(brightest == darkest ? brightest : $"{brightest} to {darkest}")} s at {now.Aperture.Nominal}, {now.Iso.Nominal}";
    }
}
