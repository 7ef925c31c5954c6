using StudioKit.Kits.Cameras;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Subjects;
using StudioKit.Physics.Optics;

namespace StudioKit.Planning.Framing;

/// <summary>A framing with the optics behind it.</summary>
/// <param name="Plan">What the plan says of it.</param>
/// <param name="Stack">The focused stack.</param>
/// <param name="Lens">The lens as the kit has it.</param>
public sealed record PlannedFraming(FramingPlan Plan, OpticalStackResult Stack, LensSpec Lens)
{
    // Marks such as 1:3 are rounded.
    private const double SameSize = 0.01;

    /// <summary>Those of some subjects that it shows whole.</summary>
    /// <param name="subjects">The subjects.</param>
    public IEnumerable<SubjectSpec> Whole(IEnumerable<SubjectSpec> subjects) => subjects.Where(subject => subject.Length <= Plan.LongestWhole);

    /// <summary>Whether it is reached, and a set-up uses its lens at its magnification.</summary>
    public bool IsUsedIn(SetUpSpec setUp) => Plan.Reached
        && (setUp.Lenses.Count == 0 || setUp.Lenses.Contains(Lens.Name))
        && (setUp.Magnifications.Count == 0 || setUp.Magnifications.Any(wanted => Math.Abs((Plan.Magnification.Value / wanted.Value) - 1) < SameSize));
}
