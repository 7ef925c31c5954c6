using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Planning.SetUps.WhiteBackground;

/// <summary>What may be seen of a white background and its subject.</summary>
internal static class WhiteSymptoms
{
    private const double Same = 1e-6;

    private static readonly double[] Further = [1.15, 1.3, 1.5, 1.75, 2];

    /// <summary>Symptoms and what may help.</summary>
    public static IEnumerable<SymptomRule> Of(SetUpSpec setUp, ExposurePlan now)
    {
        List<LightPlan> sheets = [.. now.Lights.Where(light => light.Role.IsBackground())];
        if (sheets.Count == 0
            || now is not { WhiteMargin: { } darkest, BrightestMargin: { } brightest, HighestMargin: { } highest })
        {
            return [];
        }

        var below = sheets[0];
        return
        [
            GreyCorners(setUp, sheets, darkest, highest - brightest),
            NothingBlinks(below, darkest, brightest),
            Dimmed(Symptom.WashedOut, setUp, sheets, darkest, changed => Less(changed.BrightestMargin, now.BrightestMargin, below.DialStep)),
            .. now.Uplight is null ? [] : new[] { Dimmed(Symptom.EatenLegs, setUp, sheets, darkest, changed => Less(changed.Uplight, now.Uplight, below.DialStep)) },
            HotSpot(setUp, sheets, brightest - darkest),
            .. CommonSymptoms.SubjectLevel(now),
            .. Silhouette(setUp, now),
        ];
    }

    private static SymptomRule GreyCorners(SetUpSpec setUp, List<LightPlan> sheets, Stops darkest, Stops room)
    {
        var wanted = darkest + sheets[0].DialStep;
        var more = new KitChange.TargetMargin(setUp.Name, wanted);
        return new SymptomRule(
            Symptom.GreyCorners,
            [[more], .. FurtherOff(setUp, sheets).Select(move => (ValueList<KitChange>)[move, more])],
            changed => changed.WhiteMargin is { } margin && margin.Value >= wanted.Value - Same)
        {
            Room = Clicks(room, sheets[0].DialStep),
        };
    }

    // Where not even the brightest point clips, the flash gives at least that much less than planned.
    private static SymptomRule NothingBlinks(LightPlan below, Stops darkest, Stops brightest)
    {
        var clicks = Math.Max(1, Math.Ceiling((brightest.Value / below.DialStep.Value) - Same));
        return new SymptomRule(
            Symptom.NothingBlinks,
            [[new KitChange.Gives(below.Flash, new Stops(-clicks * below.DialStep.Value))]],
            changed => changed.WhiteMargin is { } margin && margin.Value >= Math.Min(darkest.Value, 0) - Same);
    }

    // Less from below, as long as the darkest corner stays white; else from further off, where the light is more even.
    private static SymptomRule Dimmed(Symptom seen, SetUpSpec setUp, List<LightPlan> sheets, Stops darkest, Func<ExposurePlan, bool> mends)
    {
        var less = darkest - sheets[0].DialStep;
        var white = new KitChange.TargetMargin(setUp.Name, new Stops(Math.Max(0, less.Value)));
        return new SymptomRule(
            seen,
            [
                .. less.Value >= -Same ? (ValueList<KitChange>[])[[new KitChange.TargetMargin(setUp.Name, less)]] : [],
                .. FurtherOff(setUp, sheets).Select(move => (ValueList<KitChange>)[move, white]),
            ],
            changed => mends(changed) && changed.WhiteMargin is { } margin && margin.Value >= -Same)
        {
            Room = Clicks(darkest, sheets[0].DialStep),
        };
    }

    // Whole clicks of the dial, since nothing in between can be turned.
    private static Stops Clicks(Stops room, Stops step) => new(Math.Max(0, Math.Floor((room.Value / step.Value) + Same) * step.Value));

    private static SymptomRule HotSpot(SetUpSpec setUp, List<LightPlan> sheets, Stops spread) => new(
        Symptom.HotSpot,
        [.. FurtherOff(setUp, sheets).Select(move => (ValueList<KitChange>)[move])],
        changed => changed is { WhiteMargin: { } darkest, BrightestMargin: { } brightest } && (brightest - darkest).Value <= spread.Value * 0.75);

    private static IEnumerable<SymptomRule> Silhouette(SetUpSpec setUp, ExposurePlan now) => now.Lights.Any(light => !light.Role.IsBackground())
        ? []
        : [new SymptomRule(Symptom.Silhouette, [], _ => true)];

    private static IEnumerable<KitChange> FurtherOff(SetUpSpec setUp, List<LightPlan> sheets) =>
        from light in sheets
        from share in Further
        select new KitChange.Move(setUp.Name, light.Place, Length.FromCentimeters(Math.Round(light.Distance.Centimeters * share)));

    private static bool Less(Stops? changed, Stops? now, Stops by) => changed is { } level && now is { } before && level.Value <= before.Value - by.Value + Same;
}
