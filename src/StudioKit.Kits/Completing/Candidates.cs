using StudioKit.Kits.Description;
using StudioKit.Kits.Editing;

namespace StudioKit.Kits.Completing;

/// <summary>Lists what may stand at a place.</summary>
internal static class Candidates
{
    private const int Step = 2;

    public static IReadOnlyList<KitCandidate> At(Spot spot, PartsLibrary parts)
    {
        List<KitCandidate> all = [.. Keys(spot), .. Values(spot), .. PartCandidates.At(spot, parts)];
        var typed = spot.Typed;
        var begin = all.Where(one => one.Label.StartsWith(typed, StringComparison.OrdinalIgnoreCase)).ToList();
        return [.. begin.Count > 0 ? begin : all.Where(one => one.Label.Contains(typed, StringComparison.OrdinalIgnoreCase)), .. UnitCandidates.At(spot)];
    }

    /// <summary>The candidate that writes a value in the place of the word; none where its quotation marks would have to change.</summary>
    public static KitCandidate? Value(Spot spot, KitCandidateKind kind, string word, string help)
    {
        if (spot.Mark != ' ' && (word.Contains(spot.Mark, StringComparison.Ordinal) || word.Contains('\\', StringComparison.Ordinal)))
        {
            return null;
        }

        var isText = spot.Value is null || spot.Value.TakesText();
        return new KitCandidate(kind, word, help, Edit(spot, spot.Mark != ' ' ? word : ScalarText.Write(word, spot.IsFlow, isText)));
    }

    private static IEnumerable<KitCandidate> Keys(Spot spot) => (spot.Section?.All() ?? [])
        .Where(facts => !spot.Taken.Any(taken => taken.Key == facts.Key && taken.Start != spot.Start))
        .Select(facts => new KitCandidate(KitCandidateKind.Key, facts.Key, facts.Doc, Edit(spot, Key(spot, facts))));

    private static string Key(Spot spot, KeyFacts facts)
    {
        var below = spot.LineEnd + new string(' ', spot.Column + Step);
        return spot.HasColon ? facts.Key
            : spot.IsFlow || facts.Inner is null ? facts.Key + ": "
            : facts.IsList ? $"{facts.Key}:{below}- "
            : $"{facts.Key}:{below}";
    }

    private static IEnumerable<KitCandidate> Values(Spot spot)
    {
        if (spot.Value is not { Kind: { } kind } facts)
        {
            return [];
        }

        var words = kind.Words.Concat(kind.AlsoWords).Concat(kind.LateWords?.Invoke() ?? []).Select(word => Value(spot, KitCandidateKind.Word, word, ""));
        var names = facts.RefersTo is { } refersTo ? spot.Names.Of(refersTo).Select(name => Value(spot, KitCandidateKind.Name, name, $"One of the kit's {refersTo}.")) : [];
        var isShown = kind.Words.Count == 0 && facts.RefersTo is null && spot.PartKind is null;
        var usual = isShown && facts.Default is { } text && !(facts.IsList && text.Contains(',', StringComparison.Ordinal)) ? Value(spot, KitCandidateKind.Default, text, "Taken where nothing is written.") : null;
        var example = isShown && kind.Example != facts.Default ? Value(spot, KitCandidateKind.Example, kind.Example, $"For example, {kind.Noun}.") : null;
        return words.Concat(names).Append(usual).Append(example).OfType<KitCandidate>();
    }

    private static TextEdit Edit(Spot spot, string word) => new(spot.From, spot.End - spot.From, spot.Before + word);
}
