using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Planning;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Changes of a kit as something to do, with values and units, e.g. "Move the sedge to 380 mm below the panel".</summary>
public static class MendText
{
    /// <summary>Several changes, in order, as one sentence without its full stop.</summary>
    /// <param name="changes">The changes.</param>
    /// <param name="kit">The kit that they are made to.</param>
    /// <exception cref="ArgumentNullException">Something is missing.</exception>
    public static string Of(ValueList<KitChange> changes, KitSpec kit)
    {
        ArgumentNullException.ThrowIfNull(changes);
        ArgumentNullException.ThrowIfNull(kit);
        var words = InOrder(changes, kit).Distinct(StringComparer.Ordinal).ToList();
        return string.Join("; ", words.Select((text, place) => place == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..]));
    }

    // Each is said of the kit that those before it have changed.
    private static IEnumerable<string> InOrder(ValueList<KitChange> changes, KitSpec kit)
    {
        foreach (var change in changes)
        {
            yield return One(change, kit);
            kit = change.Apply(kit);
        }
    }

    private static string One(KitChange change, KitSpec kit) => change switch
    {
        KitChange.OfSetUp ofSetUp => $"{OfSetUp(ofSetUp, kit.SetUps.First(setUp => setUp.Name == ofSetUp.SetUp), kit)}{(kit.SetUps.Count > 1 ? $" ({ofSetUp.SetUp})" : "")}",
        KitChange.Sheet sheet => $"Cut the panel to {Sides(sheet.Width ?? kit.Panel.Width, sheet.Depth ?? kit.Panel.Depth)}",
        KitChange.Recut recut => $"Cut the panel to {Sides(recut.Width ?? kit.Panel.Width, recut.Depth ?? kit.Panel.Depth)}",
        KitChange.Strengthen strengthen => Strengthened(strengthen.Change),
        KitChange.FrameHeight height => $"Make the frame {PlanFormat.Millimetres(height.Height)} high",
        KitChange.FrameShape shape => $"Take a {MemberText.Of(shape.Kind)} frame",
        KitChange.PieceLength piece => $"Let pieces of the frame be up to {PlanFormat.Millimetres(piece.Length)} long",
        KitChange.Magnify { To: { } to } magnify => $"Use the {magnify.Lens} at {to.Nominal} instead of {Wanted(magnify, kit)}",
        KitChange.Magnify magnify => $"Do without {Wanted(magnify, kit)} on the {magnify.Lens}",
        KitChange.Zoom zoom => $"Zoom the {zoom.Flash} to {PlanFormat.GearMillimetres(zoom.To)}",
        KitChange.SpareSets sets => FormattableString.Invariant($"Carry {sets.Sets} spare {(sets.Sets == 1 ? "set" : "sets")} of cells for the {sets.Flash}"),
        KitChange.Frames frames => FormattableString.Invariant($"Take {frames.Count} {(frames.Count == 1 ? "frame" : "frames")} of each {frames.Subject}"),
        KitChange.Rounds rounds => FormattableString.Invariant($"Go through the session {(rounds.Count == 1 ? "once" : $"{rounds.Count} times")} a day"),
        KitChange.Tune tune => FormattableString.Invariant($"Set the {tune.Trigger} to channel {tune.Channel}"),
        KitChange.CarryTriggers carry => FormattableString.Invariant($"Carry {carry.Count} of the {carry.Trigger}"),
        KitChange.RecutUpright recut => $"Cut the {recut.Screen} to {Sides(recut.Width, recut.Height)}",
        KitChange.LowerUpright lower => $"Let the {lower.Screen} stand as low as it goes",
        KitChange.Lift lift => $"Lift the {lift.Cover} for the picture",
        KitChange.Restand restand => RestandText.Of(restand),
        _ => throw new ArgumentOutOfRangeException(nameof(change), change, "A change without words."),
    };

    private static string From(LightRole role) => role switch
    {
        LightRole.Below => "below the panel",
        LightRole.Behind => "behind the upright sheet",
        _ => "from the subject",
    };

    private static string OfSetUp(KitChange.OfSetUp change, SetUpSpec setUp, KitSpec kit) => change switch
    {
        KitChange.Move move => $"Move the {Light(setUp, move.Light)} to {PlanFormat.Millimetres(move.Distance)} {From(setUp.Lights[move.Light].Role)}",
        KitChange.Shift { Right: { } right } shift => $"Move the {Light(setUp, shift.Light)} to {Aside(right, "right", "left")}",
        KitChange.Shift { Back: { } back } shift => $"Move the {Light(setUp, shift.Light)} to {Aside(back, "behind", "before")}",
        KitChange.BeforeSheet before => $"Stand {(kit.Uprights.Any(upright => upright.Name == before.Screen) ? "the" : "an")} {before.Screen} on the frame {PlanFormat.Millimetres(before.Distance)} behind the subject, with the {before.Light.Flash} {PlanFormat.Millimetres(before.Light.Distance)} behind it",
        KitChange.LiftFlash lift => $"Stand the {Light(setUp, lift.Light)} {PlanFormat.Millimetres(lift.Up)} over the level of the subject",
        KitChange.Turn turn => $"Let the {Light(setUp, turn.Light)} come from {StandText.Direction(turn.From)}",
        KitChange.Hold { Holder: { } holder } hold => $"Hold the {Light(setUp, hold.Light)} with {holder}",
        KitChange.Hold hold => $"Hold the {Light(setUp, hold.Light)} by hand",
        KitChange.Fire fire => $"Fire the {Light(setUp, fire.Light)} by the {fire.Trigger}",
        KitChange.Regroup regroup => $"Put the {Light(setUp, regroup.Light)} in group {regroup.Group}",
        KitChange.PutUp up => $"Put up the {up.Shelter}",
        KitChange.PutUpInstead other => $"Put up the {other.Instead} instead of the {other.Shelter}",
        KitChange.Upright upright => $"Let the {Light(setUp, upright.Light)} shine straight up",
        KitChange.Pitch pitch => $"Look down at {MeasureFormat.Degrees(pitch.Angle)} instead of {MeasureFormat.Degrees(setUp.CameraPitches[pitch.Place])}",
        KitChange.Modify { Modifier: { } modifier } modify => $"Put the {modifier} on the {Light(setUp, modify.Light)}",
        KitChange.Modify modify => $"Take the {setUp.Lights[modify.Light].Modifier} off the {Light(setUp, modify.Light)}",
        KitChange.Add add => $"Add the {add.Light.Flash} {MemberText.Of(add.Light.Role)} at {PlanFormat.Millimetres(add.Light.Distance)}, {Aside(add.Light)}",
        KitChange.Background background when setUp.Upright is { } upright => $"Let the {upright} stand {DistanceFormat.Centimetres(background.Distance)} behind the subject",
        KitChange.Background background => $"Take a background {DistanceFormat.Metres(background.Distance)} behind the subject",
        KitChange.Ambient ambient => $"Plan for {AmbientText.Value(ambient.Light)}",
        KitChange.Shade shade => $"Shade the place by {AdviceText.Amount(shade.By)}, to {AmbientText.Value(shade.Light)}",
        KitChange.Before { Filter: { } filter } => $"Put the {filter} before the lens",
        KitChange.Before => $"Take the {setUp.Filter} off the lens",
        KitChange.UnderCover under => $"Take the {under.Cover} instead of the {setUp.Cover}",
        KitChange.Rest rest => $"Rest the camera on the {rest.Support}",
        KitChange.Aperture aperture => $"Set {aperture.FNumber.Nominal}",
        KitChange.Shutter shutter => $"Set {shutter.Speed.Nominal}",
        KitChange.Iso iso => $"Set {iso.Speed.Nominal}",
        _ => throw new ArgumentOutOfRangeException(nameof(change), change, $"A change of {kit.Name} without words."),
    };

    private static string Strengthened(StructuralChange change) => change switch
    {
        StructuralChange.AllEdgesRest => "Rest the panel on strips under all four edges",
        StructuralChange.OtherSheet sheet => $"Take a sheet of {PlanFormat.Millimetres(sheet.Thickness)}",
        StructuralChange.OtherSweep sweep => $"Bend the sweep to a radius of {PlanFormat.Millimetres(sweep.Radius)}",
        StructuralChange.EdgeRoom edge => $"Leave {PlanFormat.TenthMillimetres(Length.FromMillimeters(Math.Ceiling((edge.Room.Millimeters * 10) - 1e-6) / 10))} at every edge",
        StructuralChange.OtherPipe pipe => $"Take {pipe.Stocked.Pipe.Name}, with fittings that take it",
        StructuralChange.Stretched => "Put stretchers between the legs",
        StructuralChange.WithGuys guys => FormattableString.Invariant($"Tie cords from the top corners to {guys.Pegs} pegs"),
        StructuralChange.Pegged pegs => FormattableString.Invariant($"Put in {pegs.Pegs} pegs"),
        StructuralChange.Weighted weighted => $"Hang {MeasureFormat.Kilograms(Mass.FromKilograms(Math.Ceiling((weighted.Hung.Kilograms * 10) - 1e-6) / 10))} under the middle",
        StructuralChange.Shaded => "Shade frame and sheet from the sun",
        StructuralChange.LighterElbow elbow => $"Lean on it with no more than {MeasureFormat.Force(Force.FromNewtons(Math.Floor(elbow.Push.Newtons)))}",
        _ => throw new ArgumentOutOfRangeException(nameof(change), change, "A change without words."),
    };

    // Flashes of one kind are told apart by what they do.
    private static string Light(SetUpSpec setUp, int place)
    {
        var light = setUp.Lights[place];
        return setUp.Lights.Count(other => other.Flash == light.Flash) > 1 ? $"{light.Flash} {MemberText.Of(light.Role)}" : light.Flash;
    }

    private static string Wanted(KitChange.Magnify magnify, KitSpec kit) => kit.Lenses.First(lens => lens.Name == magnify.Lens).Magnifications[magnify.Place].Nominal;

    private static string Aside(LightSpec light) => light.OffsetRight.Meters is not 0 ? Aside(light.OffsetRight, "right", "left") : Aside(light.OffsetBack, "behind", "before");

    private static string Aside(Length offset, string positive, string negative) => Math.Round(offset.Millimeters) switch
    {
        0 => "the middle",
        > 0 => $"{PlanFormat.Millimetres(offset)} {positive} {(positive == "behind" ? "" : "of ")}the middle",
        _ => $"{PlanFormat.Millimetres(-offset)} {negative} {(negative == "before" ? "" : "of ")}the middle",
    };

    private static string Sides(Length? width, Length? depth) => (width, depth) switch
    {
        ({ } across, { } along) => PlanFormat.Rectangle(across, along),
        ({ } across, _) => $"{PlanFormat.Millimetres(across)} across",
        (_, { } along) => $"{PlanFormat.Millimetres(along)} deep",
        _ => "what the framings need",
    };
}
