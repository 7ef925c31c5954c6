using StudioKit.Planning;
using StudioKit.Planning.Packing;

namespace StudioKit.Wording;

/// <summary>What to change and to leave at home for a target mass, in words.</summary>
internal static class HomeText
{
    /// <summary>All of it, what keeps the kit's purpose first.</summary>
    public static string Of(LeaveAtHomePlan home)
    {
        var changes = string.Concat(home.Lighter.Select((step, i) => FormattableString.Invariant($"{i + 1}. {Of(step)} ")));
        var proof = home.ProvenLeast ? "" : " A better choice may exist; the search was cut short.";
        return $"To come down to {MeasureFormat.Mass(home.Target)}: {changes}{Left(home)}; {MeasureFormat.Mass(home.Mass)} remain{(home.Reached ? "" : ", still too much")}.{proof}";
    }

    /// <summary>What one change is.</summary>
    public static string Of(LighterChange change) => change switch
    {
        LighterChange.FewerCells cells => $"spare sets of cells: {string.Join(", ", cells.SpareSets.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => FormattableString.Invariant($"{pair.Value} for {pair.Key}")))}",
        LighterChange.SmallerPanel panel => $"a panel of {PlanFormat.Rectangle(panel.Width, panel.Depth)}",
        LighterChange.LighterPipe pipe => $"{pipe.Stocked.Pipe.Name}, with fittings that take it",
        LighterChange.ThinnerSheet sheet => $"a sheet of {PlanFormat.Millimetres(sheet.Thickness)}",
        _ => throw new ArgumentOutOfRangeException(nameof(change), change, "A change without words."),
    };

    private static string Of(LighterStep step)
    {
        var lost = step.Lost.Count == 0 ? "no framing lost" : $"lost: {string.Join("; ", step.Lost)}";
        var margin = step.MarginChange is { } change ? FormattableString.Invariant($", white margin {change.Value:+0.00;-0.00;±0} stop") : "";
        return $"{Sentence.Begin(Of(step.Change))}: {MeasureFormat.Mass(step.Saved)} less, {lost}{margin}.";
    }

    private static string Left(LeaveAtHomePlan home)
    {
        var lost = home.Lost.Count == 0 ? "no framing is lost" : $"lost: {string.Join("; ", home.Lost)}";
        return home.Left.Count == 0
            ? home.Reached ? "nothing more need stay at home" : "nothing more can stay at home"
            : $"{(home.Lighter.Count > 0 ? "Then leave" : "leave")} at home: {string.Join(", ", home.LeftWords)}; {lost}";
    }
}
