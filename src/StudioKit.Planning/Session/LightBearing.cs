using StudioKit.Kits.Quantities;
using StudioKit.Kits.Subjects;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;
using StudioKit.Planning.SetUps;

namespace StudioKit.Planning.Session;

/// <summary>The ambient light that the exposures of a set-up bear, those that a session takes.</summary>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Planned">Ambient light that it is planned for.</param>
/// <param name="Works">Ambient light in which each of them, planned again for it, works no worse than as planned.</param>
public sealed record LightBearing(string SetUp, ExposureValue Planned, LightRange Works)
{
    /// <summary>What the exposures of a set-up bear; none where no subject is photographed in it.</summary>
    /// <param name="inputs">What they follow from, that set-up alone.</param>
    /// <param name="exposures">The exposures.</param>
    internal static LightBearing? Of(ExposureInputs inputs, IReadOnlyList<ExposurePlan> exposures)
    {
        var setUp = inputs.Kit.SetUps[0];
        var taken = inputs.Kit.Subjects.Select(subject => Taken(setUp.Name, subject, exposures)).OfType<ExposurePlan>().Distinct().ToList();
        if (taken.Count == 0)
        {
            return null;
        }

        var brighter = taken.Min(exposure => Steps(inputs, exposure, 1));
        var darker = taken.Min(exposure => Steps(inputs, exposure, -1));
        var planned = taken[0].Ambient;
        return new LightBearing(setUp.Name, planned, new LightRange(new ExposureValue(planned.AtIso100 - darker), new ExposureValue(planned.AtIso100 + brighter)));
    }

    /// <summary>The exposure that a subject is photographed with in a set-up: the framing that fills the frame best; of equal ones that with more room before the lens, for shy animals.</summary>
    internal static ExposurePlan? Taken(string setUp, SubjectSpec subject, IReadOnlyList<ExposurePlan> exposures) => exposures
        .Where(exposure => exposure.SetUp == setUp && exposure.IsUsable && exposure.Subjects.Contains(subject.Name))
        .OrderByDescending(exposure => exposure.Framing.Magnification.Value)
        .ThenByDescending(exposure => exposure.Framing.WorkingDistance)
        .FirstOrDefault();

    // Whole stops, one after the other: beyond a light in which it does not work nobody goes.
    private static int Steps(ExposureInputs inputs, ExposurePlan exposure, int sign)
    {
        var framing = inputs.Framings.First(candidate => candidate.Plan.Name == exposure.Framing.Name);
        var steps = 0;
        while (steps < AmbientSteps.Furthest && AmbientSteps.From(exposure.Ambient, sign * (steps + 1)) is { } light && WorksIn(light))
        {
            steps++;
        }

        return steps;

        bool WorksIn(ExposureValue light)
        {
            var setUp = SceneLights.In(inputs.Kit.SetUps[0], light);
            return ExposurePlanner.VerdictOf(new SetUpAtFraming(inputs.Kit, setUp, framing, inputs.Known, inputs.Light)).Verdict <= exposure.Verdict.Verdict;
        }
    }
}
