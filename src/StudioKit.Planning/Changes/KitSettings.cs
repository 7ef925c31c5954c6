using System.Globalization;
using StudioKit.Kits;
using StudioKit.Kits.Editing;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Uprights;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Changes;

/// <summary>How changes are written into a kit's text, value by value.</summary>
public static class KitSettings
{
    /// <summary>What a change writes and takes away, in order.</summary>
    /// <param name="change">The change.</param>
    /// <param name="kit">The kit that it is made to.</param>
    /// <exception cref="ArgumentOutOfRangeException">The change is none that a kit's text can hold.</exception>
    public static ValueList<KitSetting> Of(KitChange change, KitSpec kit)
    {
        ArgumentNullException.ThrowIfNull(kit);
        return change switch
        {
            KitChange.OfSetUp ofSetUp => OfSetUp(ofSetUp, kit),
            KitChange.Sheet sheet => Sides(sheet.Width, sheet.Depth),
            KitChange.Recut recut => [.. Sides(recut.Width, recut.Depth), Gone("panel.mass"), Gone("frame.mass")],
            KitChange.Strengthen strengthen => StructuralSettings.Of(strengthen.Change, kit),
            KitChange.FrameHeight height => [Of("frame.height", Text(height.Height)), Gone("frame.mass")],
            KitChange.FrameShape shape => [Of("frame.kind", MemberText.Of(shape.Kind)), Gone("frame.mass")],
            KitChange.PieceLength piece => [Of("frame.longest-piece", Text(piece.Length))],
            KitChange.Magnify magnify => Magnify(magnify, kit),
            KitChange.Zoom zoom => [.. Zoom(zoom, kit)],
            KitChange.SpareSets sets => [Of($"flashes[{FlashAt(kit, sets.Flash)}].spare-sets", Text(sets.Sets))],
            KitChange.Frames frames => [Of($"subjects[{Place(kit.Subjects.Select(subject => subject.Name), frames.Subject)}].frames", Text(frames.Count))],
            KitChange.Rounds rounds => [Of("session.rounds", Text(rounds.Count))],
            KitChange.Tune tune => [Of($"{TriggerAt(kit, tune.Trigger)}.channel", Text(tune.Channel))],
            KitChange.CarryTriggers carry => [Of($"{TriggerAt(kit, carry.Trigger)}.count", Text(carry.Count))],
            KitChange.RecutUpright recut => [.. UprightSettings(kit, recut.Screen, ("width", recut.Width), ("height", recut.Height)), Gone($"uprights[{UprightAt(kit, recut.Screen)}].sheet.mass")],
            KitChange.LowerUpright lower => [Gone($"uprights[{UprightAt(kit, lower.Screen)}].over-ground")],
            KitChange.Lift lift => [Of($"covers[{Text(Place(kit.Covers.Select(cover => cover.Name), lift.Cover))}].lifted", "yes")],
            KitChange.Restand restand => RestandSettings.Of(restand, Place(kit.Uprights.Select(upright => upright.Name), restand.Stand)),
            _ => throw new ArgumentOutOfRangeException(nameof(change), change, "Not a change that a kit's text can hold."),
        };
    }

    /// <summary>A length as a kit writes it, to the tenth of a millimetre.</summary>
    internal static string Text(Length length) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(length.Millimeters, 1):0.#} mm");

    private static string Text(Angle angle) => string.Create(CultureInfo.InvariantCulture, $"{angle.Degrees:0.##}°");

    internal static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);

    internal static KitSetting Of(string path, string value) => new(path, KitValue.Of(value));

    internal static KitSetting Gone(string path) => new(path, null);

    private static ValueList<KitSetting> OfSetUp(KitChange.OfSetUp change, KitSpec kit)
    {
        var place = Place(kit.SetUps.Select(setUp => setUp.Name), change.SetUp);
        var (setUp, path) = (kit.SetUps[place], $"set-ups[{Text(place)}]");
        string Light(int light) => $"{path}.lights[{Text(light)}]";
        return change switch
        {
            KitChange.Move move => [Of($"{Light(move.Light)}.distance", Text(move.Distance))],
            KitChange.Shift shift => [.. Offsets(Light(shift.Light), shift.Right, shift.Back)],
            KitChange.Turn turn => [Of($"{Light(turn.Light)}.azimuth", Text(turn.From.Azimuth)), Of($"{Light(turn.Light)}.elevation", Text(turn.From.Elevation))],
            KitChange.Hold hold => [Named($"{Light(hold.Light)}.holder", hold.Holder)],
            KitChange.Fire fire => [Of($"{Light(fire.Light)}.trigger", fire.Trigger)],
            KitChange.Regroup regroup => [Of($"{Light(regroup.Light)}.group", regroup.Group)],
            KitChange.PutUp or KitChange.PutUpInstead => [new KitSetting($"{path}.shelters", KitValue.ListOf([.. change.Apply(kit).SetUps[place].Shelters]))],
            KitChange.Upright upright => [Gone($"{Light(upright.Light)}.tilt"), Gone($"{Light(upright.Light)}.aim-right"), Gone($"{Light(upright.Light)}.aim-back")],
            KitChange.Pitch pitch => [Of(setUp.CameraPitches.Count > 1 ? $"{path}.camera-pitch[{Text(pitch.Place)}]" : $"{path}.camera-pitch", Text(pitch.Angle))],
            KitChange.Modify modify => [Named($"{Light(modify.Light)}.modifier", modify.Modifier)],
            KitChange.Add add => [new KitSetting(Light(setUp.Lights.Count), Section(add.Light))],
            KitChange.BeforeSheet before => [.. Stand(before, kit), Of($"{path}.upright", before.Screen), Of($"{path}.background-distance", Text(before.Distance)), new KitSetting(Light(setUp.Lights.Count), Section(before.Light))],
            KitChange.LiftFlash lift => [Of($"{Light(lift.Light)}.offset-up", Text(lift.Up))],
            KitChange.Background background => [Of($"{path}.background-distance", Text(background.Distance))],
            KitChange.Ambient ambient => [.. InLight(path, setUp, ambient.Light)],
            KitChange.Shade shade => [.. InLight(path, setUp, shade.Light)],
            KitChange.Before before => [Named($"{path}.filter", before.Filter)],
            KitChange.UnderCover under => [Of($"{path}.cover", under.Cover)],
            KitChange.Rest rest => [Of($"{path}.support", rest.Support)],
            KitChange.Aperture aperture => [Of($"{path}.aperture", aperture.FNumber.Nominal)],
            KitChange.Shutter shutter => [Of($"{path}.shutter", shutter.Speed.Nominal)],
            KitChange.Iso iso => [Of($"{path}.iso", iso.Speed.Mark)],
            _ => throw new ArgumentOutOfRangeException(nameof(change), change, "Not a change that a kit's text can hold."),
        };
    }

    private static IEnumerable<KitSetting> Stand(KitChange.BeforeSheet before, KitSpec kit) => kit.Uprights.Any(upright => upright.Name == before.Screen)
        ? []
        : [new KitSetting($"uprights[{Text(kit.Uprights.Count)}]", KitValue.SectionOf(("name", before.Screen), ("carrier", MemberText.Of(UprightCarrier.Frame))))];

    private static IEnumerable<KitSetting> UprightSettings(KitSpec kit, string sheet, params (string Key, Length Side)[] sides) =>
        sides.Select(side => Of($"uprights[{UprightAt(kit, sheet)}].{side.Key}", Text(side.Side)));

    private static string UprightAt(KitSpec kit, string sheet) => Text(Place(kit.Uprights.Select(upright => upright.Name), sheet));

    private static IEnumerable<KitSetting> InLight(string path, SetUpSpec setUp, ExposureValue light)
    {
        yield return Of($"{path}.ambient", Text(light.AtIso100));
        if (SceneLights.In(setUp, light).SubjectAmbient is { } subject)
        {
            yield return Of($"{path}.subject-ambient", Text(subject.AtIso100));
        }
    }

    private static ValueList<KitSetting> Sides(Length? width, Length? depth) =>
        [.. new[] { (Key: "panel.width", Size: width), (Key: "panel.depth", Size: depth) }.Where(side => side.Size is not null).Select(side => Of(side.Key, Text(side.Size!.Value)))];

    private static IEnumerable<KitSetting> Offsets(string light, Length? right, Length? back)
    {
        if (right is { } aside)
        {
            yield return Of($"{light}.offset-right", Text(aside));
        }

        if (back is { } beyond)
        {
            yield return Of($"{light}.offset-back", Text(beyond));
        }
    }

    private static KitSetting Named(string path, string? name) => name is null ? Gone(path) : Of(path, name);

    private static KitValue Section(LightSpec light) => KitValue.SectionOf(
    [
        ("flash", light.Flash), ("role", MemberText.Of(light.Role)), ("distance", Text(light.Distance)),
        .. light.OffsetRight.Meters is 0 ? [] : new[] { ("offset-right", Text(light.OffsetRight)) },
        .. light.OffsetBack.Meters is 0 ? [] : new[] { ("offset-back", Text(light.OffsetBack)) },
        .. light.Trigger is { } trigger ? new[] { ("trigger", trigger), ("group", light.Group) } : [],
    ]);

    private static string Text(double exposureValue) => string.Create(CultureInfo.InvariantCulture, $"EV {Math.Round(exposureValue, 2):0.##}");

    private static ValueList<KitSetting> Magnify(KitChange.Magnify change, KitSpec kit)
    {
        var lens = Place(kit.Lenses.Select(lens => lens.Name), change.Lens);
        var path = $"lenses[{Text(lens)}].magnifications{(kit.Lenses[lens].Magnifications.Count > 1 ? $"[{Text(change.Place)}]" : "")}";
        return [change.To is { } to ? Of(path, to.Nominal) : Gone(path)];
    }

    private static IEnumerable<KitSetting> Zoom(KitChange.Zoom zoom, KitSpec kit)
    {
        yield return Of($"flashes[{FlashAt(kit, zoom.Flash)}].zoom", Text(zoom.To));
        foreach (var (setUp, place) in kit.SetUps.Select((setUp, place) => (setUp, place)))
        {
            foreach (var (light, at) in setUp.Lights.Select((light, at) => (light, at)).Where(pair => pair.light.Flash == zoom.Flash && pair.light.Zoom is not null))
            {
                yield return Of($"set-ups[{Text(place)}].lights[{Text(at)}].zoom", Text(zoom.To));
            }
        }
    }

    private static string TriggerAt(KitSpec kit, string name) => $"triggers[{Text(Place(kit.Triggers.Select(trigger => trigger.Name), name))}]";

    private static string FlashAt(KitSpec kit, string flash) => Text(Place(kit.Flashes.Select(one => one.Name), flash));

    private static int Place(IEnumerable<string> names, string name) => names.ToList().IndexOf(name) is >= 0 and var place ? place : throw new ArgumentOutOfRangeException(nameof(name), name, "The kit has nothing of that name.");
}
