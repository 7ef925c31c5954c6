using StudioKit.Planning;
using StudioKit.Planning.Checks;

namespace StudioKit.Wording;

/// <summary>What stands in the way of a check.</summary>
internal static class FindingText
{
    public static string Of(PlanCheck check) => string.Join(' ', check.Findings.Select(Of));

    /// <summary>The first of what stands in the way, and how much more there is.</summary>
    public static string First(PlanCheck check, int most) => string.Join(
        ' ', check.Findings.Take(most).Select(Of).Concat(check.Findings.Count > most ? [FormattableString.Invariant($"So are {check.Findings.Count - most} more.")] : []));

    public static string Of(CheckFinding finding) => finding switch
    {
        CheckFinding.OutOfReach of => ReachText.Of(of.Limit),
        CheckFinding.OfFeature { Feature: var feature } => $"{feature.SetUp}, {feature.Framing}: {FeatureText.Cause(feature.Limit!.Value)}.",
        CheckFinding.OfCover of => CoverText.Spoilt(of.Framing, of.View),
        CheckFinding.OfNoFrame none => FrameText.Of(none.Obstacle),
        CheckFinding.OfFrame frame => FrameText.Of(frame.Problem),
        CheckFinding.OfCradle cradle => $"{CradleText.Clause(cradle.Fault)}.",
        CheckFinding.OfUpright light => $"{light.SetUp}: {LightProblemText.OfUpright(light.Problem, light.Flash)}",
        CheckFinding.OfGap { Gap: { By: { } by } gap } => $"{gap.SetUp}: {gap.Framing} at {MeasureFormat.Degrees(gap.Pitch)} sees {PlanFormat.Millimetres(by)} under the sheet.",
        CheckFinding.OfGap { Gap: var gap } => $"{gap.SetUp}: {gap.Framing} at {MeasureFormat.Degrees(gap.Pitch)} looks down past a sheet of any size.",
        CheckFinding.OfLight light => $"{light.SetUp}: {LightProblemText.Of(light.Problem, light.Flash)}",
        CheckFinding.OfStand of => StandFaultText.Of(of.Stand, of.Fault),
        CheckFinding.OfTrigger of => FiringText.Of(of.Fault),
        CheckFinding.NotCut uncut => UncutText.Of(uncut.Piece),
        CheckFinding.NoPlace none => PackText.Of(none.Misfit),
        CheckFinding.OfExposure of => $"{of.Exposure.Framing.Name}, {VerdictText.Word(of.Exposure)}: {VerdictText.Missed(of.Exposure)}",
        _ => throw new ArgumentOutOfRangeException(nameof(finding), finding, "A finding without words."),
    };
}
