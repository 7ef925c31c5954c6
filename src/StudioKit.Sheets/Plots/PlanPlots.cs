using StudioKit.Planning;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Plots;

/// <summary>Every plot that a plan has the data for.</summary>
public static class PlanPlots
{
    /// <summary>Depth of field first, then sharpness by framing, then power by set-up and flash.</summary>
    /// <param name="plan">The plan; every point is read from it.</param>
    /// <returns>For each plot the name of its file, its title and the drawing.</returns>
    public static IReadOnlyList<(string Name, string Title, Drawing Drawing)> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var drawings = plan.DepthCurves.Count == 0 ? [] : new List<(string Name, Drawing Drawing)> { ("plot-depth", DepthPlot.Of(plan.DepthCurves)) };
        drawings.AddRange(Sharpness(plan));
        drawings.AddRange(Powers(plan));
        return [.. Numbered(drawings).Select(each => (each.Name, each.Drawing.Title, each.Drawing))];
    }

    // Set-ups share a framing's curve unless they are for other subjects or f-numbers.
    private static IEnumerable<(string Name, Drawing Drawing)> Sharpness(Plan plan) => plan.Exposures
        .Where(exposure => exposure.SharpnessCurve is not null)
        .DistinctBy(exposure => (exposure.Framing.Name, exposure.SharpnessCurve!.Subject))
        .Select(exposure => ($"plot-sharpness-{FileName(exposure.Framing.Name)}", SharpnessPlot.Of(exposure.Framing, exposure.SharpnessCurve!)));

    private static IEnumerable<(string Name, Drawing Drawing)> Powers(Plan plan) => plan.Exposures
        .SelectMany(exposure => plan.Advice.Of(exposure).Distances.Select(of => (exposure.SetUp, of.Light.Flash, Framing: exposure.Framing.Name, of.Steps)))
        .GroupBy(line => (line.SetUp, line.Flash))
        .Select(group => ($"plot-power-{FileName(group.Key.SetUp)}-{FileName(group.Key.Flash)}",
            PowerPlot.Of(group.Key.SetUp, group.Key.Flash, [.. group.Select(line => (line.Framing, line.Steps))])))
        .Where(named => named.Item2 is not null)
        .Select(named => (named.Item1, named.Item2!));

    private static IEnumerable<(string Name, Drawing Drawing)> Numbered(IEnumerable<(string Name, Drawing Drawing)> drawings) => drawings
        .GroupBy(each => each.Name, StringComparer.Ordinal)
        .SelectMany(group => group.Select((each, place) => place == 0 ? each : (FormattableString.Invariant($"{each.Name}-{place + 1}"), each.Drawing)));

    // Only letters and digits that every file system takes; "1:2" becomes "1-2".
    private static string FileName(string name)
    {
        var letters = name.Select(letter => char.IsAsciiLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : '-');
        return string.Join('-', string.Concat(letters).Split('-', StringSplitOptions.RemoveEmptyEntries));
    }
}
