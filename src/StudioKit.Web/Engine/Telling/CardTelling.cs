using StudioKit.Planning;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine.Telling;

/// <summary>A starting exposure as its card says it.</summary>
internal static class CardTelling
{
    public static CardFace Of(ExposurePlan exposure) => new(
        exposure.SetUp, exposure.Framing.Name, string.Join(" + ", exposure.Framing.Accessories),
        exposure.Aperture.Nominal, exposure.Shutter.Nominal, exposure.Iso.Nominal,
        [.. exposure.Lights.Select(Light)],
        StandingOf(exposure.Verdict), VerdictText.FirstFrame(exposure), VerdictText.Missed(exposure),
        exposure is { WhiteMargin: { } darkest, BrightestMargin: { } brightest } ? StopText.Of(darkest, brightest) : "",
        Math.Round(exposure.Framing.LongestWhole.Millimeters, 1), exposure.Subjects,
        PlanFormat.GiveOrTake(exposure.Framing.WorkingDistance, exposure.Framing.WorkingDistanceUncertainty), [.. exposure.TestSteps.Select(step => TestStepText.Of([step]))]);

    private static CardLight Light(LightPlan light) => new(light.Flash, RoleText.Word(light.Role), light.PowerText, DistanceFormat.Centimetres(light.Distance), light.Modifier ?? "");

    /// <summary>Whether an exposure holds.</summary>
    public static Standing StandingOf(ExposureVerdict verdict) => verdict.Verdict switch
    {
        Verdict.Works => Standing.Stands,
        Verdict.AtTheEdge => Standing.AtTheEdge,
        _ => Standing.Fails,
    };
}
