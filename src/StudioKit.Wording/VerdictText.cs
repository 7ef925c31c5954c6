using StudioKit.Planning;

namespace StudioKit.Wording;

/// <summary>Whether an exposure works, in words.</summary>
public static class VerdictText
{
    /// <summary>The verdict in a word or two.</summary>
    public static string Word(ExposurePlan exposure)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        return exposure.Verdict.Verdict switch
        {
            Verdict.Works => "works",
            Verdict.AtTheEdge => "at the edge",
            _ => "does not work",
        };
    }

    /// <summary>What it misses, a sentence each, the limit that binds first; empty where it works.</summary>
    public static string Missed(ExposurePlan exposure)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        return string.Join(' ', exposure.Verdict.Missed.Select(LimitText.Of).Distinct());
    }

    /// <summary>How likely the first frame is right, and what goes wrong where it is not; empty where that is not known.</summary>
    public static string Chances(ExposurePlan exposure)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        var wrong = exposure.Verdict switch
        {
            { GreyCorner: { } grey } => $"; a grey corner {Percent(grey)}",
            { BackgroundShows: { } shows } => $"; background lighter than asked {Percent(shows)}",
            _ => "",
        };
        return exposure.Verdict.FirstFrame is { } right ? $"First frame right {Percent(right)}{wrong}" : "";
    }

    /// <summary>The verdict, and how likely the first frame is right.</summary>
    public static string FirstFrame(ExposurePlan exposure)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        return exposure.Verdict is { Verdict: not Verdict.DoesNotWork, FirstFrame: { } right } ? $"{Word(exposure)}, {Percent(right)}" : Word(exposure);
    }

    private static string Percent(double share) => share is > 0 and < 0.01 ? "under 1 %" : share is > 0.99 and < 1 ? "over 99 %" : MeasureFormat.Percent(Math.Round(share, 2));
}
