using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;

namespace StudioKit.Wording;

/// <summary>Advice in words: what to move and what to set, all of it from the plan that was made with it.</summary>
public static class AdviceText
{
    /// <summary>What is seen.</summary>
    public static string Seen(SymptomAdvice symptom)
    {
        ArgumentNullException.ThrowIfNull(symptom);
        return SymptomNames.Of(symptom.Seen);
    }

    /// <summary>What to turn against it.</summary>
    /// <param name="now">The exposure as it is set.</param>
    /// <param name="symptom">What is seen, and the advice.</param>
    /// <param name="inShort">Powers as one fraction, where room is short.</param>
    public static string Turn(ExposurePlan now, SymptomAdvice symptom, bool inShort = false)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(symptom);
        var turn = symptom.TurnsPolariser ? "turn the polariser until it goes"
            : symptom.Advice is not null ? (symptom.Wait is null ? "" : "; or ") + Of(now, symptom.Advice, inShort)
            : symptom.Wait is null ? "nothing in the kit helps at this framing" : "";
        return string.Concat(Before(now, symptom), turn, Room(symptom));
    }

    /// <summary>What to move and set.</summary>
    /// <param name="now">The exposure as it is set.</param>
    /// <param name="advice">The advice.</param>
    /// <param name="inShort">Powers as one fraction, where room is short.</param>
    public static string Of(ExposurePlan now, Advice advice, bool inShort = false)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(advice);
        if (advice.Promise.Framing.Name != now.Framing.Name)
        {
            return $"take the card {advice.Promise.Framing.Name}: glass to subject {PlanFormat.Millimetres(advice.Promise.Framing.WorkingDistance)}";
        }

        return string.Join("; ", advice.Changes.Select(change => Moved(now, change)).OfType<string>().Concat(Set(now, advice.Promise, inShort)));
    }

    // Before anything is turned: what no plan can see.
    private static string Before(ExposurePlan now, SymptomAdvice symptom) => symptom switch
    {
        { Wait: { } wait } => $"wait {MeasureFormat.Wait(wait)} between frames",
        { Seen: Symptom.NothingBlinks } => $"is the {(now.Lights.FirstOrDefault(light => light.Role.IsBackground()) is { } sheet ? Name(sheet.Role) : "flash")} on, charged and triggered? Then ",
        _ => "",
    };

    private static string Room(SymptomAdvice symptom) => symptom switch
    {
        { Room: null } => "",
        { Room.Value: <= 0 } => "; no room beyond that",
        { Seen: Symptom.GreyCorners } => $"; room {Amount(symptom.Room.Value)} before it veils",
        _ => $"; room {Amount(symptom.Room.Value)} before corners go grey",
    };

    /// <summary>An amount of light without a sign, e.g. <c>2 stops</c>.</summary>
    public static string Amount(Stops amount) => $"{amount.Nominal.TrimStart('+')} {(amount.Value > 1 ? "stops" : "stop")}";

    private static string? Moved(ExposurePlan now, KitChange change) => change switch
    {
        KitChange.Move move => Moved(now.Lights.FirstOrDefault(light => light.Place == move.Light), move),
        KitChange.Add add => $"add the {add.Light.Flash} {Role(add.Light.Role)} at {DistanceFormat.Centimetres(add.Light.Distance)}",
        KitChange.Modify { Modifier: { } modifier } modify => $"put the {modifier} on the {Placed(now, modify.Light)}",
        KitChange.Modify modify => $"take the {now.Lights.FirstOrDefault(light => light.Place == modify.Light)?.Modifier ?? "modifier"} off the {Placed(now, modify.Light)}",
        KitChange.Turn turn => $"{Placed(now, turn.Light)} from {StandText.Direction(turn.From)}",
        KitChange.Hold hold => $"{Placed(now, hold.Light)} {(hold.Holder is { } holder ? $"on {holder}" : "by hand")}",
        KitChange.RecutUpright sheet => $"the {sheet.Screen} {DistanceFormat.CentimetreSides(sheet.Width, sheet.Height)}",
        KitChange.Background background when now.Upright is { } upright => $"{upright} {DistanceFormat.Centimetres(background.Distance)} behind the subject",
        KitChange.Background background => $"background {DistanceFormat.Metres(background.Distance)} behind the subject",
        KitChange.PutUp up => $"put up the {up.Shelter}",
        KitChange.Shade shade => $"shade by {Amount(shade.By)}, to {AmbientText.Value(shade.Light)}",
        KitChange.Before { Filter: { } filter } => $"put the {filter} before the lens",
        KitChange.Before => $"take the {now.Filter} off",
        KitChange.Rest rest => $"camera on the {rest.Support}",
        _ => null,
    };

    private static string Placed(ExposurePlan now, int place) => now.Lights.FirstOrDefault(light => light.Place == place) is { } light ? Name(light.Role) : "flash";

    private static string Moved(LightPlan? light, KitChange.Move move) =>
        $"{(light is null ? "flash" : Name(light.Role))} {(light is not null && move.Distance < light.Distance ? "nearer" : "further off")}, to {DistanceFormat.Centimetres(move.Distance)}";

    private static IEnumerable<string> Set(ExposurePlan now, Promise then, bool inShort)
    {
        if (then.Aperture != now.Aperture)
        {
            yield return then.Aperture.Nominal;
        }

        if (then.Shutter != now.Shutter)
        {
            yield return then.Shutter.Nominal;
        }

        if (then.Iso != now.Iso)
        {
            yield return then.Iso.Nominal;
        }

        foreach (var alike in then.Lights.Where(light => now.Lights.FirstOrDefault(before => before.Place == light.Place)?.Power != light.Power)
            .GroupBy(light => $"{(inShort && HasTwoSheets(now) ? Role(light.Role) : Name(light.Role))} to {(inShort ? light.Mark.AsOneFraction : light.Mark.Nominal)}"))
        {
            yield return alike.Count() == 1 ? alike.Key : "each " + alike.Key;
        }
    }

    // With two sheets nearly every line names two flashes: a card has room for their places alone.
    private static bool HasTwoSheets(ExposurePlan now) => now.Lights.Any(light => light.Role == LightRole.Below) && now.Lights.Any(light => light.Role == LightRole.Behind);

    private static string Name(LightRole role) => role is LightRole.Below or LightRole.Above or LightRole.Behind ? $"flash {Role(role)}" : Role(role);

    private static string Role(LightRole role) => MemberText.Of(role);
}
