using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Planning.SetUps;

/// <summary>What may be seen in every way of lighting.</summary>
internal static class CommonSymptoms
{
    // A frame is missed because the flash was not ready: this much of the wait gone makes the difference.
    private const double ShorterWait = 0.7;

    // Half the smear is what one sees.
    private const double LessSmear = 0.6;

    // Less is hidden than anybody sees [stops].
    private const double LeastHidden = 0.05;

    private static readonly Stops OneStop = new(1);

    /// <summary>A grey frame now and then: the flash that is slowest to be ready asks for less power, by a faster ISO or from nearer.</summary>
    public static IEnumerable<SymptomRule> FrameMissing(SetUpSpec setUp, ExposurePlan now)
    {
        if (now.Lights.Count == 0)
        {
            yield break;
        }

        var slowest = now.Lights.MaxBy(light => light.RecycleTime)!;
        yield return new SymptomRule(
            Symptom.FrameMissing,
            [
                [new KitChange.Iso(setUp.Name, new IsoSpeed(now.Iso.Value * OneStop.Ratio))],
                [new KitChange.Move(setUp.Name, slowest.Place, Nearer(slowest.Distance))],
            ],
            changed => Wait(changed) <= Wait(now) * ShorterWait)
        {
            Wait = slowest.RecycleTime,
        };
    }

    /// <summary>Smear: less of it by a shorter shutter, less ambient light, a weaker and so shorter flash, or what is steadier than what the camera rests on.</summary>
    public static SymptomRule Smeared(KitSpec kit, SetUpSpec setUp, ExposurePlan now) => new(
        Symptom.Smeared,
        [
            .. now.Shutter.Seconds > kit.SyncOf(setUp).Seconds * 1.1 ? (ValueList<KitChange>[])[Shorter(setUp, now, kit.SyncOf(setUp))] : [],
            [new KitChange.Iso(setUp.Name, new IsoSpeed(now.Iso.Value * OneStop.Ratio))],
            .. Steadied(kit, setUp),
            .. now.ShowsHabitat ? [] : Shaded(kit, setUp),
            .. now.ShowsHabitat ? [] : (ValueList<KitChange>[])[[new KitChange.Shade(setUp.Name, new ExposureValue(now.Ambient.AtIso100 - OneStop.Value), OneStop)]],
        ],
        changed => now.Sharpness.SmearPixels > 0 && changed.Sharpness.SmearPixels <= now.Sharpness.SmearPixels * LessSmear && (!now.ShowsHabitat || KeepsTheScene(now, changed)));

    /// <summary>The camera on the steadiest thing in the bag; nothing where it rests on that.</summary>
    public static IEnumerable<ValueList<KitChange>> Steadied(KitSpec kit, SetUpSpec setUp) =>
        kit.SteadierThan(setUp) is { } support ? [[new KitChange.Rest(setUp.Name, support.Name)]] : [];

    /// <summary>Each shade of the kit that a set-up leaves in the bag, put up.</summary>
    public static IEnumerable<ValueList<KitChange>> Shaded(KitSpec kit, SetUpSpec setUp) => kit.Shelters
        .Where(shelter => shelter.Shades && !setUp.Shelters.Contains(shelter.Name))
        .Select(shelter => (ValueList<KitChange>)[new KitChange.PutUp(setUp.Name, shelter.Name)]);

    /// <summary>Whether a scene comes out as bright as before, to a click of the dial.</summary>
    public static bool KeepsTheScene(ExposurePlan now, ExposurePlan changed) => Math.Abs(changed.AmbientLevel.Value - now.AmbientLevel.Value) <= 1.0 / 3;

    /// <summary>Shine on wet or glossy skin: the polariser that is before the lens turned, or one from the bag put there.</summary>
    public static IEnumerable<SymptomRule> Shine(SetUpSpec setUp, ExposurePlan now, IEnumerable<string> polarisers)
    {
        var carried = polarisers.ToList();
        if (now.Filter is { } filter && carried.Contains(filter))
        {
            yield return new SymptomRule(Symptom.Shine, [], _ => true) { TurnsPolariser = true };
        }
        else if (now.Filter is null && carried.Count > 0)
        {
            yield return new SymptomRule(Symptom.Shine, [[new KitChange.Before(setUp.Name, carried[0])]], _ => true);
        }
    }

    /// <summary>The lens's shadow: the light that the lens hides from another direction, else another lens of the set-up that leaves more room at the same magnification.</summary>
    /// <param name="now">The exposure.</param>
    /// <param name="all">Every exposure of the kit.</param>
    /// <param name="turns">Directions to try for a light that is hidden, nearest first.</param>
    public static IEnumerable<SymptomRule> LensShadow(ExposurePlan now, IEnumerable<ExposurePlan> all, Func<LightPlan, IEnumerable<KitChange>> turns)
    {
        const double MoreRoom = 1.3;
        const double SameSize = 1.1;
        var other = all
            .Where(exposure => exposure.SetUp == now.SetUp && exposure.Verdict.Verdict <= now.Verdict.Verdict)
            .Where(exposure => Math.Abs(Math.Log(exposure.Framing.Magnification.Value / now.Framing.Magnification.Value)) < Math.Log(SameSize))
            .Where(exposure => exposure.Framing.WorkingDistance > Length.Zero && exposure.Framing.WorkingDistance > now.Framing.WorkingDistance * MoreRoom)
            .MinBy(exposure => exposure.Framing.WorkingDistance);
        var hidden = now.Lights.Where(light => light.LensLoss.Value > LeastHidden).MaxBy(light => light.LensLoss.Value);
        return other is null && hidden is null ? [] :
        [
            new SymptomRule(
                Symptom.LensShadow,
                hidden is null ? [] : turns(hidden).Select(turn => (ValueList<KitChange>)[turn]),
                changed => changed.Lights.First(light => light.Place == hidden!.Place).LensLoss.Value <= hidden!.LensLoss.Value / 2)
            {
                Instead = other,
            },
        ];
    }

    /// <summary>A light on the subject that is a click of its dial too weak or too strong.</summary>
    public static IEnumerable<SymptomRule> SubjectLevel(ExposurePlan now)
    {
        if (now.Lights.FirstOrDefault(light => !light.Role.IsBackground() && light.Role != LightRole.Rim) is not { } main)
        {
            yield break;
        }

        yield return Level(Symptom.SubjectDark, main, -main.DialStep);
        yield return Level(Symptom.SubjectBright, main, main.DialStep);
    }

    // The flash is taken to give a click less or more than its number says, which is what the frame shows.
    private static SymptomRule Level(Symptom seen, LightPlan main, Stops gives) => new(
        seen,
        [[new KitChange.Gives(main.Flash, gives)]],
        changed => changed.Lights.First(light => light.Place == main.Place) is var light && gives.Value < 0 ? Brighter(light, main) : Brighter(main, light));

    private static bool Brighter(LightPlan light, LightPlan than) => light.Power.Fraction > than.Power.Fraction;

    // A third or so nearer halves the power.
    private static Length Nearer(Length distance) => Length.FromCentimeters(Math.Max(1, Math.Round(distance.Centimeters / Math.Sqrt(OneStop.Ratio))));

    private static double Wait(ExposurePlan exposure) => exposure.Lights.Max(light => light.RecycleTime.Seconds);

    // Where the exposure follows the ambient light the ISO speed makes up for the shorter time.
    private static ValueList<KitChange> Shorter(SetUpSpec setUp, ExposurePlan now, ShutterSpeed shortest)
    {
        var shorter = new ShutterSpeed(Math.Max(shortest.Seconds, now.Shutter.Seconds / OneStop.Ratio));
        return now.ShowsHabitat
            ? [new KitChange.Shutter(setUp.Name, shorter), new KitChange.Iso(setUp.Name, new IsoSpeed(now.Iso.Value * now.Shutter.Seconds / shorter.Seconds))]
            : [new KitChange.Shutter(setUp.Name, shorter)];
    }
}
