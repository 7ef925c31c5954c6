using StudioKit.Kits.Editing;
using StudioKit.Physics;

namespace StudioKit.Kits.Forms;

/// <summary>A kit as forms show it: every field that it could have, what it says there and what a plan goes by.</summary>
/// <param name="Text">The kit's text.</param>
/// <param name="Reading">What came of reading it.</param>
/// <param name="Whole">The whole kit's fields.</param>
/// <param name="Elsewhere">What is wrong in parts that the kit names, and with the text as YAML.</param>
public sealed record KitForm(KitText Text, KitReadResult Reading, FormGroup Whole, ValueList<Diagnostic> Elsewhere)
{
    private const string FileName = "kit.yaml";

    // Part lookups go where the kit's own did.
    private PartsLibrary Parts { get; init; } = PartsLibrary.Embedded;

    /// <summary>The form of a kit.</summary>
    /// <param name="text">The kit's text, whether or not it can be read.</param>
    /// <param name="parts">Where its parts are looked up.</param>
    /// <param name="fileName">Name that diagnostics give the file.</param>
    /// <exception cref="ArgumentNullException">There is no text or no library.</exception>
    public static KitForm Of(KitText text, PartsLibrary parts, string fileName = FileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Of(text, KitReader.Parse(text.Text, fileName, parts), parts, fileName);
    }

    /// <summary>The form of a kit that has been read already.</summary>
    /// <param name="text">The kit's text.</param>
    /// <param name="reading">What came of reading it.</param>
    /// <param name="parts">Where its parts are looked up.</param>
    /// <param name="fileName">Name that diagnostics give the file.</param>
    /// <exception cref="ArgumentNullException">Something is missing.</exception>
    public static KitForm Of(KitText text, KitReadResult reading, PartsLibrary parts, string fileName = FileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(parts);

        var builder = new FormBuilder(text, reading, fileName);
        return new KitForm(text, reading, builder.Whole(), builder.Elsewhere) { Parts = parts };
    }

    /// <summary>The field at a path.</summary>
    /// <param name="path">The path, e.g. <c>flashes[0].guide-number</c>.</param>
    /// <returns>The field; none where the kit has no such section or no kit such a key.</returns>
    public FormField? Find(string path) => All().FirstOrDefault(field => field.Path == path);

    /// <summary>Every field, those of groups behind the group's own.</summary>
    public IEnumerable<FormField> All() => All(Whole);

    /// <summary>Names that things of one kind bear in this kit.</summary>
    /// <param name="namedAmong">Plural of the kind, e.g. <c>flashes</c>.</param>
    public IReadOnlyList<string> Names(string namedAmong) =>
        [.. All().SelectMany(field => field.Groups).Where(group => group.Group.NamedAmong == namedAmong)
            .Select(group => group.Fields.First(field => field.Field.Key == "name").InEffect).OfType<string>().Distinct(StringComparer.Ordinal)];

    /// <summary>Reads what somebody types into a field, and says what is wrong with it as the whole kit's reader would; names are looked up in this kit.</summary>
    /// <param name="path">Path of the field.</param>
    /// <param name="typed">The text of one value, without quotation marks of YAML.</param>
    /// <returns>What it means, or the diagnostics.</returns>
    /// <exception cref="ArgumentException">No kit has such a key.</exception>
    /// <exception cref="InvalidOperationException">The field is a group.</exception>
    public FieldCheck Check(string path, string typed)
    {
        var field = KitGroup.FieldAt(path) ?? throw new ArgumentException($"No kit has '{path}'.", nameof(path));
        return FieldCheck.Of(field, typed, field.NamesOf is { } kind ? Names(kind) : null, Parts);
    }

    private static IEnumerable<FormField> All(FormGroup group) => group.Fields.SelectMany(field => field.Groups.SelectMany(All).Prepend(field));
}
