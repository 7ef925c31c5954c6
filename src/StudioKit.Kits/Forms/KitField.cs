using StudioKit.Kits.Description;
using StudioKit.Kits.Editing;
using StudioKit.Kits.Quantities;
using StudioKit.Physics;

namespace StudioKit.Kits.Forms;

/// <summary>One key of the kit as a form shows it, whatever a kit says there.</summary>
public sealed class KitField
{
    private KitField(KeyFacts facts, string path, string? partKind)
    {
        Facts = facts;
        Path = path;
        PartKind = partKind;
        Label = FieldLabels.Of(facts.Key);
        Kind = partKind is not null && facts.Inner is null ? FieldKind.Part : FieldKinds.Of(facts);
        Units = facts.Kind?.Dimension is { } dimension ? [.. UnitTable.Symbols(dimension)] : [];
        Choices = facts.Kind is { Words.Count: > 0 } kind && Kind == FieldKind.Choice ? [.. kind.Words.Select(word => new FieldChoice(word, FieldLabels.Of(word)))] : [];
        Group = facts.Inner is { } inner ? KitGroup.Of(inner, facts.InnerFacts!(), facts.IsList ? path + "[]" : path) : null;
    }

    /// <summary>The key, e.g. <c>guide-number</c>.</summary>
    public string Key => Facts.Key;

    /// <summary>Where it stands, e.g. <c>flashes[].guide-number</c>.</summary>
    public string Path { get; }

    /// <summary>The key in plain words, e.g. <c>Guide number</c>.</summary>
    public string Label { get; }

    /// <summary>What it is for, in a sentence.</summary>
    public string Help => Facts.Doc;

    /// <summary>What it takes.</summary>
    public FieldKind Kind { get; }

    /// <summary>Whether it takes a list: of groups, or of single values, of which one may also stand alone.</summary>
    public bool IsList => Facts.IsList;

    /// <summary>Whether it must be there, unless a part brings it along.</summary>
    public bool IsRequired => Facts.IsRequired;

    /// <summary>Smallest value allowed, as a person would write it; none where there is none.</summary>
    public string? Least => Facts.Bounds.Least;

    /// <summary>Largest value allowed, as a person would write it; none where there is none.</summary>
    public string? Most => Facts.Bounds.Most;

    /// <summary>What StudioKit takes where nothing is written; none where nothing stands in, or where it follows from other values, as the help then says.</summary>
    public string? Default => Facts.Default;

    /// <summary>What a value is, with its article, e.g. <c>a length</c>; none for a group.</summary>
    public string? Noun => Facts.Kind?.Noun;

    /// <summary>A value as people write it; none for a group.</summary>
    public string? Example => Facts.Kind?.Example;

    /// <summary>Unit that a bare number most likely stands for; none where values have no unit.</summary>
    public string? UsualUnit => Facts.Kind?.Dimension?.Guess;

    /// <summary>Every unit that may be written, the usual one first.</summary>
    public ValueList<string> Units { get; }

    /// <summary>Whether an uncertainty may follow, as <c>± 5 %</c>.</summary>
    public bool TakesUncertainty => Facts.Kind?.TakesUncertainty ?? false;

    /// <summary>Every word allowed, where there is a choice.</summary>
    public ValueList<FieldChoice> Choices { get; }

    /// <summary>Kind of part that can be named: in the field itself, or in place of its group; none where none can.</summary>
    public string? PartKind { get; }

    /// <summary>Plural of the things of the kit that it names, e.g. <c>flashes</c>; none where it names none.</summary>
    public string? NamesOf => Facts.RefersTo;

    /// <summary>Its fields where it is a group or a list of them; none where it takes single values.</summary>
    public KitGroup? Group { get; }

    internal KeyFacts Facts { get; }

    /// <summary>Reads what somebody types into the field, and says what is wrong with it as the whole kit's reader would.</summary>
    /// <param name="typed">The text of one value, without quotation marks of YAML.</param>
    /// <returns>What it means, or the diagnostics; whether something bears a name that it refers to is not looked at.</returns>
    /// <exception cref="ArgumentNullException">There is no text.</exception>
    /// <exception cref="InvalidOperationException">The field is a group.</exception>
    public FieldCheck Check(string typed) => FieldCheck.Of(this, typed, null, PartsLibrary.Embedded);

    internal static KitField Of(KeyFacts facts, string path, string? partKind) => new(facts, path, facts.Key == SectionKeys.Part ? partKind : facts.Inner?.PartKind);
}
