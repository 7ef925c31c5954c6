using StudioKit.Kits.Description;

namespace StudioKit.Kits.Editing;

/// <summary>Writes values in the style of the text they go into.</summary>
/// <param name="lineEnd">What its lines end with.</param>
/// <param name="dashIndent">How far its lists' hyphens stand behind their key.</param>
internal sealed class ValueWriter(string lineEnd, int dashIndent)
{
    private const int Step = 2;

    public string LineEnd => lineEnd;

    /// <summary>A value on one line.</summary>
    public static string Line(KitValue value, KeyFacts? facts, bool isFlow, char mark = ' ') => value switch
    {
        KitValue.Scalar scalar => ScalarText.Write(scalar.Text, isFlow, facts.TakesText(), mark),
        KitValue.List list => $"[{string.Join(", ", list.Items.Select(item => Line(item, facts, isFlow: true)))}]",
        KitValue.Section section => $"{{{string.Join(", ", section.Entries.Select(entry => $"{entry.Key}: {Line(entry.Value, facts?.Inner?.Find(entry.Key), isFlow: true)}"))}}}",
        _ => "",
    };

    /// <summary>What follows the colon of a key that stands at an indentation, on its line or on lines below.</summary>
    public string Behind(KitValue value, KeyFacts? facts, int indent) => value switch
    {
        KitValue.Section { Entries.Count: > 0 } section => string.Concat(section.Entries.Select(entry => NewLine(indent + Step) + Pair(entry, facts, indent + Step))),
        KitValue.List list when list.Items.Any(item => item is not KitValue.Scalar) => string.Concat(list.Items.Select(item => NewLine(indent + dashIndent) + Entry(item, facts, indent + dashIndent))),
        _ => " " + Line(value, facts, isFlow: false),
    };

    /// <summary>An entry of a list with its hyphen, which stands at an indentation.</summary>
    public string Entry(KitValue value, KeyFacts? facts, int indent) => value is KitValue.Section { Entries.Count: > 0 } section
        ? "- " + string.Join(NewLine(indent + Step), section.Entries.Select(entry => Pair(entry, facts, indent + Step)))
        : "- " + Line(value, facts, isFlow: false);

    /// <summary>A line end and blanks up to an indentation.</summary>
    public string NewLine(int indent) => lineEnd + new string(' ', indent);

    private string Pair(KitEntry entry, KeyFacts? facts, int indent) => $"{entry.Key}:{Behind(entry.Value, facts?.Inner?.Find(entry.Key), indent)}";
}
