using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Panels;

/// <summary>One framing at one camera angle looking at the panel.</summary>
internal sealed record PanelSight(KitSpec Kit, SetUpSpec SetUp, PlannedFraming Framing, Angle Pitch, Angle Roll)
{
    /// <summary>Every framing of every white-background set-up at every camera angle of it.</summary>
    public static IReadOnlyList<PanelSight> All(KitSpec kit, IReadOnlyList<PlannedFraming> framings) =>
        [.. kit.SetUps
            .Where(setUp => setUp.Kind == SetUpKind.WhiteBackground)
            .SelectMany(setUp => framings
                .Where(framing => framing.Plan.Reached && (setUp.Lenses.Count == 0 || setUp.Lenses.Contains(framing.Lens.Name)))
                .SelectMany(framing => Of(kit, setUp, framing)))];

    /// <summary>One framing at every camera angle of a set-up.</summary>
    public static IEnumerable<PanelSight> Of(KitSpec kit, SetUpSpec setUp, PlannedFraming framing) =>
        setUp.CameraPitches.SelectMany(pitch => setUp.CameraRolls.Select(roll => new PanelSight(kit, setUp, framing, pitch, roll)));

    /// <summary>The camera's view with the subject's foot at a place behind the panel's middle.</summary>
    public CameraView ViewAt(Length subjectBack) => new()
    {
        Name = Framing.Plan.Name,
        FieldWidth = Framing.Plan.FieldWidth,
        FieldHeight = Framing.Plan.FieldHeight,
        PupilDistance = Framing.Plan.SubjectToEntrancePupil,
        Pitch = Pitch,
        Roll = Roll,
        SubjectHeight = HeightLookedAt,
        SubjectBack = subjectBack,
    };

    // The line of sight goes through the middle of the tallest subject that fits the frame.
    private Length HeightLookedAt => Kit.Subjects
        .Where(subject => subject.Length <= Framing.Plan.FieldWidth)
        .Select(subject => SharpnessPlanner.HeightOf(subject) / 2)
        .DefaultIfEmpty(Length.Zero)
        .Max();
}
