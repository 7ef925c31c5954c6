using StudioKit.Kits.SetUps;
using StudioKit.Kits.Subjects;
using StudioKit.Physics.Light;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Studio.Panels;

/// <summary>One framing at one camera angle looking at the panel.</summary>
/// <param name="Subjects">Subjects of the kit; the tallest that fits the frame lifts the line of sight.</param>
/// <param name="Framing">The framing.</param>
/// <param name="Pitch">Angle of the line of sight under the horizontal.</param>
/// <param name="Roll">Turn of the camera about its line of sight.</param>
/// <param name="UprightBehind">How far behind the subject an upright sheet stands on the panel; none where none does.</param>
internal sealed record PanelSight(IReadOnlyList<SubjectSpec> Subjects, PlannedFraming Framing, Angle Pitch, Angle Roll, Length? UprightBehind)
{
    /// <summary>Every framing of a set-up at every camera angle of it.</summary>
    public static IEnumerable<PanelSight> Of(IReadOnlyList<SubjectSpec> subjects, SetUpSpec setUp, IReadOnlyList<PlannedFraming> framings) =>
        framings.Where(framing => framing.IsUsedIn(setUp)).SelectMany(framing => Of(subjects, setUp, framing));

    /// <summary>One framing at every camera angle of a set-up.</summary>
    public static IEnumerable<PanelSight> Of(IReadOnlyList<SubjectSpec> subjects, SetUpSpec setUp, PlannedFraming framing) =>
        setUp.CameraPitches.SelectMany(pitch => setUp.CameraRolls.Select(roll => At(subjects, setUp, framing, pitch, roll)));

    /// <summary>One framing at one camera angle, in a set-up.</summary>
    public static PanelSight At(IReadOnlyList<SubjectSpec> subjects, SetUpSpec setUp, PlannedFraming framing, Angle pitch, Angle roll) =>
        new(subjects, framing, pitch, roll, setUp.Upright is null ? null : setUp.BackgroundDistance);

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
        EndsBehind = UprightBehind,
    };

    // The line of sight goes through the middle of the tallest subject that fits the frame.
    private Length HeightLookedAt => Framing.Whole(Subjects)
        .Select(subject => SharpnessPlanner.HeightOf(subject) / 2)
        .DefaultIfEmpty(Length.Zero)
        .Max();
}
