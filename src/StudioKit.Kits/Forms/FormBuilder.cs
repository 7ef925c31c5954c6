using StudioKit.Kits.Editing;
using StudioKit.Kits.Yaml;
using StudioKit.Physics;

namespace StudioKit.Kits.Forms;

/// <summary>Lays what a kit says over the description of what it could say.</summary>
internal sealed class FormBuilder
{
    private readonly Layout _layout;
    private readonly KitReadResult _reading;
    private readonly Dictionary<string, string> _defaults = new(StringComparer.Ordinal);
    private readonly ILookup<string, Diagnostic> _faults;

    public FormBuilder(KitText text, KitReadResult reading, string fileName)
    {
        _layout = text.Layout;
        _reading = reading;
        foreach (var used in reading.Defaults)
        {
            _defaults[used.Path] = used.Value;
        }

        Elsewhere = [.. reading.Diagnostics.Where(fault => fault.File != fileName || _layout.Root is null)];
        _faults = reading.Diagnostics.Where(fault => fault.File == fileName && _layout.Root is not null)
            .ToLookup(fault => FaultPlace.Of(fault, _layout), StringComparer.Ordinal);
    }

    public ValueList<Diagnostic> Elsewhere { get; }

    public FormGroup Whole() => Group(KitGroup.Whole, "", _layout.Root, null);

    private FormGroup Group(KitGroup group, string path, YamlNode? node, WrittenValue? written)
    {
        var part = group.PartKind is null ? null : _reading.Written.GetValueOrDefault(path);
        return new FormGroup(path, group, written, part, [.. group.Fields.Select(field => Field(field, Join(path, field.Key), node))], [.. _faults[path]]);
    }

    private FormField Field(KitField field, string path, YamlNode? section)
    {
        var place = section is MapNode map ? map.Pairs.ToList().FindIndex(pair => pair.Key.Text == field.Key) : -1;
        var node = place < 0 ? null : ((MapNode)section!).Pairs[place].Value;
        var written = node is null ? null : WrittenValue.Of(_layout, ((MapNode)section!).Pairs[place], path);
        if (field.Group is { } group)
        {
            return new FormField(path, field, written, null, written is null ? ValueOrigin.None : ValueOrigin.Written, [.. field.IsList || node is null ? _faults[path] : []], Groups(field, group, path, node, written)) { IsMissing = IsMissing(field, node, section) };
        }

        var (value, origin) = InEffect(field, path, node, section);
        return new FormField(path, field, written, value, origin, [.. _faults[path]], []) { IsMissing = value is null && IsMissing(field, node, section) };
    }

    private ValueList<FormGroup> Groups(KitField field, KitGroup group, string path, YamlNode? node, WrittenValue? written) => !field.IsList
        ? [Group(group, path, node, written)]
        : node is ListNode list
            ? [.. list.Items.Select((item, at) => Group(group, Entry(path, at), item, WrittenValue.Of(_layout, list, at, Entry(path, at))))]
            : [];

    private (string? Value, ValueOrigin Origin) InEffect(KitField field, string path, YamlNode? node, YamlNode? section)
    {
        if (field.Kind == FieldKind.Part && section is ScalarNode { IsEmpty: false } part)
        {
            return (part.Text, ValueOrigin.Written);
        }

        var written = node is null ? null : Said(ValueTree.Of(node, _layout));
        return written is { Length: > 0 } ? (written, ValueOrigin.Written)
            : FromPart(path) is { } figure ? (figure, ValueOrigin.Part)
            : _defaults.TryGetValue(path, out var used) ? (used, ValueOrigin.Default)
            : (null, ValueOrigin.None);
    }

    private string? FromPart(string path)
    {
        if (_reading.Written.TryGetValue(path, out var one))
        {
            return one;
        }

        var several = new List<string>();
        while (_reading.Written.TryGetValue(Entry(path, several.Count), out var next))
        {
            several.Add(next);
        }

        return several.Count == 0 ? null : string.Join(", ", several);
    }

    private static string? Said(KitValue value) => value switch
    {
        KitValue.Scalar scalar => scalar.Text,
        KitValue.List list => string.Join(", ", list.Items.Select(Said)),
        _ => null,
    };

    // A section with a part has from it what it needs, or the part's own faults tell.
    private static bool IsMissing(KitField field, YamlNode? node, YamlNode? section) =>
        field.IsRequired && node is null && section is MapNode map && map.Find(SectionKeys.Part) is null;

    private static string Join(string path, string key) => path.Length == 0 ? key : $"{path}.{key}";

    private static string Entry(string path, int place) => FormattableString.Invariant($"{path}[{place}]");
}
