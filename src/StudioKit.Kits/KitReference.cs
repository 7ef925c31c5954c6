using System.Text;
using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;

namespace StudioKit.Kits;

/// <summary>Tells people what a kit file may hold: every section and key with its unit, bounds and what stands in for it.</summary>
public static class KitReference
{
    private const string Opening =
        """
        # What a kit can say

        Every section and key of a kit file, made from the description by which kits are read. A kit is a YAML file; the first section is the file itself.
        A key in **bold** must be there. What is left out is taken as the last column says, and the plan's appendix lists all that was; a dash means that nothing stands in.
        Where a section can be a part, the name of one may stand instead of it, or as its key `part` with other keys beside it that differ.


        """;

    private const string Values =
        """
        ## How values are written

        A number carries its unit, and decimals take a point. Behind a value marked ± may stand how far off it can be, as `± 5 %`, `± 2 mm` or, where it counts light, `± 1/3 stop`.

        | Value | For example | Units |
        |---|---|---|

        """;

    /// <summary>Writes the page.</summary>
    /// <returns>Markdown, made from the same description that the reader goes by; the same for every call.</returns>
    public static string Write()
    {
        var sections = KitSection.Inner.Prepend(KitSection.Kit).ToList();
        var text = new StringBuilder(Opening.ReplaceLineEndings("\n"));
        foreach (var section in sections)
        {
            Describe(section, text);
        }

        DescribeValues([.. sections.SelectMany(section => section.Facts).Select(facts => facts.Kind).OfType<ValueKind>().DistinctBy(kind => kind.Noun)], text);
        return text.ToString();
    }

    private static void Describe(ISection section, StringBuilder text)
    {
        var part = section.PartKind is { } kind ? $" It can be a part from `parts/{kind}`." : "";
        text.Append("## ").Append(section.Name).Append("\n\n").Append(section.Doc).Append(part).Append("\n\n")
            .Append("| Key | What it is for | Takes | Allowed | Left out |\n|---|---|---|---|---|\n");
        foreach (var facts in section.Facts)
        {
            var key = facts.IsRequired ? $"**`{facts.Key}`**" : $"`{facts.Key}`";
            Row(text, key, facts.Doc, Taken(facts), facts.Bounds is (null, null) ? "" : facts.Bounds.ToString(), LeftOut(facts));
        }

        text.Append('\n');
    }

    private static string Taken(KeyFacts facts) => facts switch
    {
        { Inner: { } inner } => $"{(facts.IsList ? "a list of " : "")}[{inner.Name}](#{inner.Name.Replace(' ', '-')})",
        { RefersTo: { } among } => facts.IsList ? $"one or more of the {among}, by name" : $"one of the {among}, by name",
        { FileKind: { } files } => $"a file beside the kit or from `parts/{files}`, e.g. `{facts.Kind!.Example}`",
        { Kind: { } kind } => Taken(kind) + (facts.IsList ? ", or a list of them" : ""),
        _ => throw new InvalidOperationException($"The description of the key '{facts.Key}' does not say what it takes."),
    };

    private static string Taken(ValueKind kind) => kind.Words.Count > 0
        ? string.Join(", ", kind.Words.Where(word => word is not ("true" or "false")).Select(word => $"`{word}`"))
        : $"{kind.Noun}, e.g. `{kind.Example}`{(kind.TakesUncertainty ? " ±" : "")}{(kind.LateWords is null ? "" : ", or a [word](#words-for-a-value)")}";

    private static string LeftOut(KeyFacts facts) => facts switch
    {
        { IsRequired: true } => "",
        { Default: { } standing } => $"`{standing}`",
        { Inner: not null, IsList: false } => "its keys' own",
        _ => "–",
    };

    private static void DescribeValues(IReadOnlyList<ValueKind> kinds, StringBuilder text)
    {
        text.Append(Values.ReplaceLineEndings("\n"));
        foreach (var kind in kinds.Where(kind => kind.Words.Count == 0).OrderBy(kind => kind.Noun, StringComparer.Ordinal))
        {
            Row(text, kind.Noun, $"`{kind.Example}`", kind.Dimension is { } dimension ? string.Join(", ", UnitTable.Symbols(dimension).Select(symbol => $"`{symbol}`")) : "");
        }

        text.Append("\n## Words for a value\n");
        foreach (var kind in kinds.Where(kind => kind.LateWords is not null))
        {
            text.Append("\nFor ").Append(kind.Noun).Append(": ").AppendJoin(", ", kind.LateWords!().Select(word => $"`{word}`")).Append(".\n");
        }
    }

    private static void Row(StringBuilder text, params string[] cells) =>
        text.Append("| ").AppendJoin(" | ", cells.Select(cell => cell.Replace("|", "\\|", StringComparison.Ordinal))).Append(" |\n");
}
