using StudioKit.Kits;
using StudioKit.Kits.Editing;
using StudioKit.Kits.Forms;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Tells the fields of a form.</summary>
/// <param name="form">The kit.</param>
/// <param name="parts">Where parts can be chosen from.</param>
internal sealed class LineTelling(KitForm form, PartsLibrary parts)
{
    private static readonly FormChoice[] YesOrNo = [new("yes", "Yes"), new("no", "No")];

    /// <summary>The fields of a group that take values; what takes sections is left out.</summary>
    public IReadOnlyList<FormLine> Of(FormGroup group) =>
        [.. group.Fields.Where(field => field.Field.Group is null && IsOffered(field)).Select(field => Of(field, group))];

    /// <summary>What an entry of a list must say.</summary>
    public IReadOnlyList<FormLine> NewEntry(FormField list) =>
        [.. list.Field.Group!.Fields.Where(field => field is { IsRequired: true, Group: null }).Select(field => Blank(field, FormattableString.Invariant($"{list.Path}[{list.Groups.Count}].{field.Key}")))];

    // A library without parts of a kind has nothing to choose from.
    private bool IsOffered(FormField field) =>
        field.Field.Kind != FieldKind.Part || field.InEffect is not null || parts.Names(field.Field.PartKind!).Count > 0;

    private FormLine Of(FormField field, FormGroup group)
    {
        var values = field.Field.Kind == FieldKind.Part ? PartNamed(field) : Values(field.Written?.Value);
        return Blank(field.Field, field.Path) with
        {
            Values = values,
            WritePath = WritePath(field, group),
            Choices = Choices(field.Field, values),
            StandIn = values.Count > 0 || field.InEffect is not { } stand ? "" : field.Origin == ValueOrigin.Part ? $"{stand}, as the part says" : $"{stand}, as nothing is said",
            IsMissing = field.IsMissing,
            Faults = [.. field.Diagnostics.Select(FaultTelling.Of)],
        };
    }

    // A part's name may stand for its whole section.
    private static string WritePath(FormField field, FormGroup group) =>
        field.Field.Kind == FieldKind.Part && (group.Written?.Value is null or KitValue.Scalar) ? group.Path : field.Path;

    private FormLine Blank(KitField field, string path) => new(path, field.Label, TakenBy(field), [])
    {
        IsList = field.IsList,
        Help = field.Help,
        Form = FieldText.Of(field),
        Example = field.Example ?? "",
        Choices = Choices(field, []),
        PartKind = field.Kind == FieldKind.Part ? field.PartKind! : "",
        IsRequired = field.IsRequired,
    };

    private static FormLineKind TakenBy(KitField field) => field.Kind switch
    {
        FieldKind.Part => FormLineKind.Part,
        FieldKind.Choice or FieldKind.YesNo or FieldKind.Name => FormLineKind.Chosen,
        _ => FormLineKind.Typed,
    };

    // What is written stays among the choices, even where it is none of them.
    private IReadOnlyList<FormChoice> Choices(KitField field, IReadOnlyList<string> written)
    {
        IReadOnlyList<FormChoice> known = field.Kind switch
        {
            FieldKind.Choice => [.. field.Choices.Select(choice => new FormChoice(choice.Word, choice.Label))],
            FieldKind.YesNo => YesOrNo,
            FieldKind.Name => [.. form.Names(field.NamesOf!).Select(name => new FormChoice(name, name))],
            _ => [],
        };
        return TakenBy(field) != FormLineKind.Chosen ? [] : [.. known, .. written.Where(word => known.All(choice => choice.Word != word)).Select(word => new FormChoice(word, word))];
    }

    private static IReadOnlyList<string> PartNamed(FormField field) => field is { Origin: ValueOrigin.Written, InEffect: { } part } ? [part] : [];

    private static IReadOnlyList<string> Values(KitValue? written) => written switch
    {
        KitValue.Scalar { Text.Length: > 0 } scalar => [scalar.Text],
        KitValue.List list => [.. list.Items.OfType<KitValue.Scalar>().Select(item => item.Text)],
        _ => [],
    };
}
