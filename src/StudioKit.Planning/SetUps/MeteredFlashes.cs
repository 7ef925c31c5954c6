using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning.Studio.Lights;

namespace StudioKit.Planning.SetUps;

/// <summary>What the camera would meter of a flash.</summary>
internal static class MeteredFlashes
{
    // Where nobody says what is before the lens (common practice, no source).
    private const double UsualReflectance = 0.18;

    // An animal covers an ellipse half as wide as it is long (common practice, no source).
    private const double WidthOverLength = 0.5;

    /// <summary>The compensation of one flash; none where the camera does not meter it, or it burns the panel out from below.</summary>
    public static MeteredFlashPlan? Of(SetUpAtFraming at, LightSpec light, LightSolution solution)
    {
        if (!LightingCases.FlashOf(at.Kit, light).Metered || light.Role.IsBackground() || light.Role == LightRole.Rim)
        {
            return null;
        }

        var level = solution.Power.Level;
        var seen = new MeteredFlashCase
        {
            SubjectShare = at.SetUp.MeteredShare ?? ShareOf(at),
            SubjectReflectance = at.MainSubject?.Reflectance ?? UsualReflectance,
            SubjectLevel = level,
            BackgroundReflectance = at.Planner.LightsSheet ? (at.Kit.UprightOf(at.SetUp)?.Sheet ?? at.Kit.Panel).UndersideReflectance : at.SetUp.BackgroundReflectance,
            BackgroundLevel = at.Planner.LightsSheet ? level : level + FallOff(light, at.SetUp),
        };
        return new MeteredFlashPlan(FlashMeter.Compensation(seen), seen.SubjectShare, seen.SubjectReflectance, seen.BackgroundReflectance, seen.BackgroundLevel);
    }

    // The meter looks at the middle of the frame, where the subject is, a quarter of it (common practice, no source).
    private const double MeteredPart = 0.25;

    // Closer up than the whole animal, it fills the frame.
    private static double ShareOf(SetUpAtFraming at) => at.MainSubject is { } subject
        ? Math.Min(1, Math.PI / 4 * WidthOverLength * subject.Length.Meters * subject.Length.Meters / (MeteredPart * at.Framing.Plan.FieldWidth.Meters * at.Framing.Plan.FieldHeight.Meters))
        : 1;

    private static Stops FallOff(LightSpec light, SetUpSpec setUp) => new(2 * Math.Log2(light.Distance / (light.Distance + setUp.BackgroundDistance)));
}
