using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Sources;
using StudioKit.Planning;
using StudioKit.Planning.Previewing;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine.Telling;

/// <summary>A place of the panel in words.</summary>
internal static class PointTelling
{
    /// <summary>What is said where nothing is known.</summary>
    public static PointAnswer Nothing { get; } = new("", "No light is planned there.", [], [], "");

    public static PointAnswer Of(PanelLightPlan light, PanelPlace place, IReadOnlyList<PointInFraming> framings, string asked) =>
        framings.FirstOrDefault(framing => framing.Framing == asked) is not { } chosen ? Nothing : new PointAnswer(
            PlanFormat.PanelPlace(light, place),
            $"{(chosen.IsSeen ? "in the frame" : "out of the frame")}, {(light.IsOverPipe(place) ? MarginText.DarkOverPipe : $"{MarginText.Of(chosen.Margin)}: {(chosen.Margin.Value < 0 ? "grey" : "white")}")}",
            [.. framings.Select(framing => new PointLine(framing.Framing, framing.IsSeen, Seen(framing), MarginText.At(light, place, framing.Margin)))],
            [.. chosen.Budget.Lines.Select(line => new AccountLine(line.Item, Signed(line.Stops), line.Detail, Bibliography.Cite(line.SourceKey, line.SourceLocator)))],
            MarginText.At(light, place, chosen.Margin));

    private static string Seen(PointInFraming framing)
    {
        var angles = framing.Views.Where(view => view.IsSeen).Select(view => MeasureFormat.Degrees(view.Pitch)).Distinct(StringComparer.Ordinal).ToList();
        return angles.Count == 0 ? "outside the frame" : $"in the frame at {string.Join(", ", angles)}";
    }

    private static string Signed(Stops stops) => FormattableString.Invariant($"{stops.Value:+0.00;-0.00;0.00}");
}
