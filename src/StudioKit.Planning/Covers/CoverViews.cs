using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Light.Covers;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Planning.Studio.Panels;
using UnitsNet;

namespace StudioKit.Planning.Covers;

/// <summary>One framing of a set-up, looked at through a cover from every angle.</summary>
internal sealed class CoverViews(KitSpec kit, SetUpSpec setUp, CoverCase cover, PlannedFraming framing, ExposurePlan exposure, bool onPanel)
{
    // Steps in which a free angle is sought; a tripod head is set no finer.
    private const int Step = 5;
    private const int Steepest = 90;

    private readonly IReadOnlyList<(LightSpec Light, CoverLamp Lamp)> _lamps = LampPlaces.Of(kit, setUp);
    private readonly Length _subject = framing.Whole(kit.SubjectsOf(setUp))
        .Select(subject => subject.Length).DefaultIfEmpty(framing.Plan.FieldHeight).Max();

    public CoveredFraming Of() => new()
    {
        Framing = framing.Plan.Name,
        DepthOfField = exposure.Sharpness.DepthOfField,
        Views = [.. PanelSight.Of(kit.Subjects, setUp, framing).Select(At)],
        Clear = [.. Clear()],
    };

    private CoveredView At(PanelSight sight)
    {
        var view = sight.ViewAt(Length.Zero);
        var seen = CoverView.Of(cover, view);
        var room = framing.Plan.WorkingDistance - seen.SeemingDistance;
        ValueList<ShownFlash> shown = [.. CoverReflections.Of(cover, view, [.. _lamps.Select(lamp => lamp.Lamp)], _subject)
            .Select(place => new ShownFlash(_lamps[place.Lamp].Light.Flash, _lamps[place.Lamp].Light.Role, place) { Hour = HourOf(place) })];
        return new CoveredView { Pitch = sight.Pitch, Roll = sight.Roll, Seen = seen, Room = room, Shown = shown, Faults = [.. Faults(seen, room, shown)] };
    }

    private double HourOf(CoverReflection at) =>
        ((Math.Atan2(at.Right * framing.Plan.FieldWidth.Meters, at.Up * framing.Plan.FieldHeight.Meters) * 6 / Math.PI) + 12) % 12;

    // What shows on white that is burnt out is not seen.
    private IEnumerable<CoverFault> Faults(CoverSight seen, Length room, ValueList<ShownFlash> shown)
    {
        (CoverFault Fault, bool Is)[] all =
        [
            (CoverFault.Reflection, shown.Any(flash => flash.Where.OnSubject || !onPanel)),
            (CoverFault.NoRoom, seen.Face is not null && room <= Length.Zero),
            (CoverFault.Astigmatism, seen.AstigmaticDifference > exposure.Sharpness.DepthOfField),
            (CoverFault.WaterEdge, cover.HoldsWater && seen.Face is null),
            (CoverFault.BottomMirrors, seen.BottomMirrors && onPanel),
            (CoverFault.FootInFrame, seen.ShowsFoot),
        ];
        return all.Where(fault => fault.Is).Select(fault => fault.Fault);
    }

    private IEnumerable<PitchRange> Clear()
    {
        int? from = null;
        for (var pitch = 0; pitch <= Steepest + Step; pitch += Step)
        {
            var isClear = pitch <= Steepest && setUp.CameraRolls.All(roll => At(PanelSight.At(kit.Subjects, setUp, framing, Angle.FromDegrees(pitch), roll)).Faults.Count == 0);
            if (!isClear && from is { } start)
            {
                yield return new PitchRange(Angle.FromDegrees(start), Angle.FromDegrees(pitch - Step));
            }

            from = isClear ? from ?? pitch : null;
        }
    }
}
