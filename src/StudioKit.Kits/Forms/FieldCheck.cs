using StudioKit.Kits.Description;
using StudioKit.Kits.Parts;
using StudioKit.Kits.Text;
using StudioKit.Kits.Yaml;
using StudioKit.Physics;

namespace StudioKit.Kits.Forms;

/// <summary>What came of reading what somebody typed into a field.</summary>
/// <param name="Meaning">The value as StudioKit writes it, e.g. <c>609.6 mm</c> for <c>24 in</c>; none where it cannot be read.</param>
/// <param name="Diagnostics">What is wrong with it; line 1 and columns of the typed text.</param>
public sealed record FieldCheck(string? Meaning, ValueList<Diagnostic> Diagnostics)
{
    private const string Typed = "typed";

    /// <summary>Whether the kit could be used with it.</summary>
    public bool IsGood => Meaning is not null;

    internal static FieldCheck Of(KitField field, string typed, IReadOnlyCollection<string>? names, PartsLibrary parts)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var faults = new DiagnosticList(Typed);
        var context = new ReadContext(faults, new PartResolver(parts, faults));
        var source = TextDecoder.Check(new SourceText(Typed, typed), faults);
        var meaning = source is null ? null : Read(field, new ScalarNode(source, 1, 1, typed.Trim(), IsQuoted: true), names, context);
        return new FieldCheck(faults.Errors == 0 ? meaning : null, faults.InOrder());
    }

    private static string? Read(KitField field, ScalarNode node, IReadOnlyCollection<string>? names, ReadContext context)
    {
        if (field.Kind == FieldKind.Part)
        {
            return context.Parts.Expand(node, field.PartKind!) is null ? null : node.Text;
        }

        if (field.Facts.Reading is not { } read)
        {
            throw new InvalidOperationException($"'{field.Path}' is a group; its fields can be checked.");
        }

        var meaning = read(node, field.Key, context);
        if (meaning is not null && field.NamesOf is { } kind && names is not null)
        {
            names.ToList().ForEach(name => context.AddName(kind, node with { Text = name }));
            context.AddReference(kind, meaning, node);
            context.CheckReferences();
        }

        return meaning;
    }
}
