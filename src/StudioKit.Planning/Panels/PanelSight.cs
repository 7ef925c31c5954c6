using StudioKit.Kits;
using StudioKit.Physics.Light;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Panels;

/// <summary>One framing at one camera pitch looking at the panel.</summary>
internal sealed record PanelSight(KitSpec Kit, SetUpSpec SetUp, PlannedFraming Framing, Angle Pitch)
{
    /// <summary>Every framing of every white-background set-up at every pitch of it.</summary>
    public static IReadOnlyList<PanelSight> All(KitSpec kit, IReadOnlyList<PlannedFraming> framings) =>
        [.. kit.SetUps
            .Where(setUp => setUp.Kind == SetUpKind.WhiteBackground)
            .SelectMany(setUp => framings
                .Where(framing => framing.Plan.Reached && (setUp.Lenses.Count == 0 || setUp.Lenses.Contains(framing.Lens.Name)))
                .SelectMany(framing => setUp.CameraPitches.Select(pitch => new PanelSight(kit, setUp, framing, pitch))))];

    /// <summary>The camera's view with the subject's foot at a place behind the panel's middle.</summary>
    public CameraView ViewAt(Length subjectBack) => new()
    {
        Name = Framing.Plan.Name,
        FieldWidth = Framing.Plan.FieldWidth,
        FieldHeight = Framing.Plan.FieldHeight,
        PupilDistance = Framing.Plan.SubjectToEntrancePupil,
        Pitch = Pitch,
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
