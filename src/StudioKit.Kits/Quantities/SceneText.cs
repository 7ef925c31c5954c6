using StudioKit.Physics.Exposure.Metering;

namespace StudioKit.Kits.Quantities;

/// <summary>Light given by its place, e.g. <c>open shade</c>, in place of a meter's reading.</summary>
internal static class SceneText
{
    // A looked-up light is no metered one: a stop to either side (common practice, no source), beside how far the scenes of one name differ.
    private const double LookedUp = 1;

    /// <summary>Every published scene by its whole name.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. SceneLightTable.All.Select(scene => scene.Scene)];

    // Letters and blanks alone, so that a pattern of them needs no escapes.
    /// <summary>Any name, whole or as far as its first words tell it from the others.</summary>
    public static string Pattern => string.Join('|', Names.SelectMany(Beginnings).Where(words => Matching(words).Count == 1).Distinct(StringComparer.Ordinal));

    /// <summary>The scene that a text names, by its whole name or by as many first words as tell it from all others; none where it names none, or several.</summary>
    public static SceneLight? Find(string text) => Matching(Plain(text)) is [var only] ? only : null;

    /// <summary>What a text that names no scene may have meant.</summary>
    public static string? Hint(string text) => Matching(Plain(text)) switch
    {
        { Count: > 1 } several => $"It may be {string.Join(" or ", several.Select(scene => $"'{scene.Scene}'"))}.",
        _ => NearestName.Of(Plain(text), Names.SelectMany(Beginnings)) is { } nearest && Plain(nearest) != Plain(text) && Find(nearest) is not null ? $"Did you mean '{nearest}'?" : null,
    };

    /// <summary>How far the light of a place that was not metered may lie to either side: half of the published range, and what any looked-up light may be off.</summary>
    public static Uncertainty Spread(SceneLight scene)
    {
        var stops = double.Hypot(LookedUp, (scene.Highest.AtIso100 - scene.Lowest.AtIso100) / 2);
        return new Uncertainty(stops, UncertaintyKind.InStops, $"{NumberText.Write(Math.Round(stops, 1))} stop");
    }

    private static List<SceneLight> Matching(string text) => SceneLightTable.All.FirstOrDefault(scene => scene.Scene == text) is { } whole ? [whole]
        : text.Length == 0 ? []
        : [.. SceneLightTable.All.Where(scene => scene.Scene.StartsWith(text + " ", StringComparison.Ordinal))];

    private static IEnumerable<string> Beginnings(string name)
    {
        for (var at = name.IndexOf(' ', StringComparison.Ordinal); at > 0; at = name.IndexOf(' ', at + 1))
        {
            yield return name[..at];
        }

        yield return name;
    }

    private static string Plain(string text) => string.Join(' ', text.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries)).ToLowerInvariant();
}
