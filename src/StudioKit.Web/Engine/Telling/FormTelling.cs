using StudioKit.Kits;
using StudioKit.Kits.Forms;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Tells one half of a kit as a form. Only what is opened has its fields along, as the page draws slowly.</summary>
/// <param name="form">The kit.</param>
/// <param name="parts">Where parts can be chosen from.</param>
/// <param name="opened">Path of the group whose fields are wanted.</param>
/// <param name="adding">Path of the list to which an entry is to be added.</param>
internal sealed class FormTelling(KitForm form, PartsLibrary parts, string opened, string adding)
{
    private static readonly string[] AnimalKeys = ["subjects", "set-ups", "session", "site"];

    private readonly LineTelling _lines = new(form, parts);

    public FormAnswer Of(FormRoom room, string obstacle) => new(
        room == FormRoom.Gear ? _lines.Of(form.Whole) : [],
        [.. form.Whole.Fields.Where(field => field.Field.Group is not null && RoomOf(field.Path) == room).Select(Section)],
        [.. FaultPlaces.Of(form).OrderBy(found => found.Fault.Line).ThenBy(found => found.Fault.Column)],
        obstacle);

    /// <summary>Which form has a path.</summary>
    public static FormRoom RoomOf(string path) => AnimalKeys.Contains(path.Split('.', '[')[0], StringComparer.Ordinal) ? FormRoom.Animals : FormRoom.Gear;

    private FormSection Section(FormField field) => new(
        field.Path, field.Field.Label, field.Field.Help, field.Field.IsList, One(field.Field.Group!),
        [.. field.Groups.Select(group => Group(group, field.Field.IsList ? group.Title : field.Field.Label))],
        field.Path == adding ? _lines.NewEntry(field) : []);

    private FormGroupLine Group(FormGroup group, string title)
    {
        var isOpen = opened == group.Path || opened.StartsWith(group.Path + ".", StringComparison.Ordinal);
        return new FormGroupLine(
            group.Path, title, group.Group.Help, group.Written is not null, FaultPlaces.Count(group), [.. group.Diagnostics.Select(FaultTelling.Of)], isOpen,
            isOpen ? _lines.Of(group) : [],
            isOpen ? [.. group.Fields.Where(field => field.Field.Group is not null).Select(Section)] : []);
    }

    private static string One(KitGroup group) => group.Label.ToLowerInvariant();
}
