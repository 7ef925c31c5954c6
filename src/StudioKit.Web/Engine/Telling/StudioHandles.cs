using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Planning;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Studio;
using StudioKit.Web.Results;
using StudioKit.Wording;
using UnitsNet;

namespace StudioKit.Web.Engine.Telling;

/// <summary>What can be moved in the studio of a set-up.</summary>
internal static class StudioHandles
{
    // Bounds within the kit's own, as far as a drawing to scale reaches [mm].
    private const double Nearest = 20;
    private const double SmallestSheet = 50;
    private const double LargestSheet = 3000;
    private const double FurthestAbove = 3000;

    // What one press of a key moves: as finely as somebody sets it up in a field (common practice, no source).
    private const double FlashStep = 5;
    private const double SheetStep = 10;
    private const double AngleStep = 1;

    /// <summary>All of them, flashes first.</summary>
    public static IEnumerable<StudioHandle> Of(KitSpec kit, PanelLightPlan light, int setUp)
    {
        var spec = kit.SetUps[setUp];
        var path = FormattableString.Invariant($"set-ups[{setUp}]");
        var below = new Queue<FlashBelowPlan>(light.Flashes);
        for (var place = 0; place < spec.Lights.Count; place++)
        {
            if (spec.Lights[place].Role == LightRole.Behind)
            {
                continue;
            }

            var key = FormattableString.Invariant($"{path}.lights[{place}]");
            foreach (var handle in spec.Lights[place].Role == LightRole.Below ? Below(spec, place, key, light, below.Dequeue()) : [Above(spec, place, key)])
            {
                yield return handle;
            }
        }

        yield return Sheet("panel.width", HandleKind.PanelWidth, "panel's width", light.PanelWidth, mm => new KitChange.Sheet(mm, null));
        yield return Sheet("panel.depth", HandleKind.PanelDepth, "panel's depth", light.PanelDepth, mm => new KitChange.Sheet(null, mm));
        for (var place = 0; place < spec.CameraPitches.Count; place++)
        {
            yield return Pitch(spec, place, path);
        }
    }

    private static IEnumerable<StudioHandle> Below(SetUpSpec setUp, int place, string key, PanelLightPlan light, FlashBelowPlan flash)
    {
        var spec = setUp.Lights[place];
        // A step clear of the skirts, where it would stand in them.
        var (right, back) = (Clear(light.PanelWidth - flash.WindowWidth), Clear(light.FlatDepth - flash.WindowHeight));
        yield return new StudioHandle(
            new Handle($"{key}.offset-right", HandleKind.FlashRight, $"{spec.Flash} below, to the side", spec.OffsetRight.Millimeters, -right, right, FlashStep, "mm", Aside(spec.OffsetRight, "right", "left")),
            mm => new KitChange.Shift(setUp.Name, place, Length.FromMillimeters(mm), null));
        yield return new StudioHandle(
            new Handle($"{key}.offset-back", HandleKind.FlashBack, $"{spec.Flash} below, to the back", spec.OffsetBack.Millimeters, -back, back, FlashStep, "mm", Aside(spec.OffsetBack, "back", "front")),
            mm => new KitChange.Shift(setUp.Name, place, null, Length.FromMillimeters(mm)));
        yield return new StudioHandle(
            new Handle(
                $"{key}.distance", HandleKind.FlashDistance, $"{spec.Flash} below, window to panel", spec.Distance.Millimeters, Nearest, Math.Max(Nearest, light.PanelHeight.Millimeters), FlashStep, "mm",
                $"{PlanFormat.Millimetres(spec.Distance)} under the panel"),
            mm => new KitChange.Move(setUp.Name, place, Length.FromMillimeters(mm)));
    }

    private static double Clear(Length room) => Math.Max(0, (room.Millimeters / 2) - FlashStep);

    private static StudioHandle Above(SetUpSpec setUp, int place, string key)
    {
        var spec = setUp.Lights[place];
        return new StudioHandle(
            new Handle(
                $"{key}.distance", HandleKind.UpperDistance, $"{spec.Flash} {RoleText.Word(spec.Role)}, to the subject", spec.Distance.Millimeters, Nearest, Math.Max(FurthestAbove, spec.Distance.Millimeters),
                SheetStep, "mm", $"{PlanFormat.Millimetres(spec.Distance)} from the subject"),
            mm => new KitChange.Move(setUp.Name, place, Length.FromMillimeters(mm)));
    }

    private static StudioHandle Sheet(string key, HandleKind kind, string name, Length size, Func<Length, KitChange> to) => new(
        new Handle(key, kind, name, size.Millimeters, SmallestSheet, LargestSheet, SheetStep, "mm", PlanFormat.Millimetres(size)), mm => to(Length.FromMillimeters(mm)));

    // A list of angles is written as one; a single angle stands by itself.
    private static StudioHandle Pitch(SetUpSpec setUp, int place, string path)
    {
        var (angle, index) = (setUp.CameraPitches[place], setUp.CameraPitches.Count > 1 ? FormattableString.Invariant($"[{place}]") : "");
        return new StudioHandle(
            new Handle(
                $"{path}.camera-pitch{index}", HandleKind.CameraPitch, $"camera's angle{(index.Length > 0 ? FormattableString.Invariant($" {place + 1}") : "")}", angle.Degrees, 1, 90, AngleStep, "°",
                $"{MeasureFormat.Degrees(angle)} under the horizontal"),
            degrees => new KitChange.Pitch(setUp.Name, place, Angle.FromDegrees(degrees)));
    }

    private static string Aside(Length offset, string positive, string negative) => Math.Round(offset.Millimeters) switch
    {
        0 => "in the middle",
        > 0 => $"{PlanFormat.Millimetres(offset)} {positive} of the middle",
        _ => $"{PlanFormat.Millimetres(-offset)} {negative} of the middle",
    };
}
