using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Planning.Framing;
using StudioKit.Planning.SetUps;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Planning.Studio.Panels;
using UnitsNet;

namespace StudioKit.Planning.Standing;

/// <summary>Subject and camera of one set-up at one framing, which its lights stand about.</summary>
/// <param name="Kit">The kit.</param>
/// <param name="SetUp">The set-up.</param>
/// <param name="Framing">The framing.</param>
/// <param name="Room">What stands about the subject.</param>
/// <param name="Subject">Middle of the subject, at which the lights are aimed.</param>
/// <param name="Points">Middle and both ends of the subject.</param>
/// <param name="Cameras">The camera at each of its angles.</param>
internal sealed record StandScene(
    KitSpec Kit, SetUpSpec SetUp, PlannedFraming Framing, LightRoom Room, Position Subject, ValueList<Position> Points, IReadOnlyList<SeenSubject> Cameras)
{
    /// <summary>The scene of a set-up at a framing.</summary>
    public static StandScene Of(KitSpec kit, SetUpSpec setUp, PlannedFraming framing, StudioLight? light)
    {
        var room = SetUpPlanners.Of(setUp).LightsPanel && light is not null ? OnPanel(light) : LightRoom.Outdoors(setUp.HeightOverGround);
        var views = PanelSight.Of(kit.Subjects, setUp, framing).Select(sight => sight.ViewAt(Length.FromMeters(room.SubjectBack))).ToList();
        var subject = new Position(0, room.SubjectBack, room.Level + views[0].SubjectHeight.Meters);
        var half = Math.Min(HalfOf(kit, setUp, framing), framing.Plan.FieldWidth.Meters / 2);
        return new StandScene(
            kit, setUp, framing, room, subject, [subject, subject with { X = -half }, subject with { X = half }], [.. views.Select(view => SeenSubject.Of(view, framing, subject))]);
    }

    /// <summary>Foot of the subject on the sheet.</summary>
    public Position Foot => Subject with { Z = Room.Level };

    private static LightRoom OnPanel(StudioLight light)
    {
        var scene = light.Unlit;
        return new LightRoom(scene.Panel.Height.Meters, light.SubjectBeyondMiddle.Meters, scene.Panel, [.. scene.Surround.Frame.OfType<PipeObstacle>()]);
    }

    // Half of the longest subject that it shows whole; closer up than all of them, half the field.
    private static double HalfOf(KitSpec kit, SetUpSpec setUp, PlannedFraming framing) => framing.Whole(kit.SubjectsOf(setUp))
        .Select(subject => subject.Length.Meters / 2)
        .DefaultIfEmpty(double.PositiveInfinity)
        .Max();
}
