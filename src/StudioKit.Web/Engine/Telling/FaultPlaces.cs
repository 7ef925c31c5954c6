using StudioKit.Kits;
using StudioKit.Kits.Forms;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Which field of a form shows what is wrong with a kit.</summary>
internal static class FaultPlaces
{
    /// <summary>Everything wrong, section by section; last what is about no field.</summary>
    public static IEnumerable<FormFault> Of(KitForm form) =>
        In(form.Whole).Concat(form.Elsewhere.Select(found => new FormFault("", FormRoom.Gear, "", FaultTelling.Of(found))));

    /// <summary>How many things are wrong with a group and what it holds.</summary>
    public static int Count(FormGroup group) => In(group).Count();

    private static IEnumerable<FormFault> In(FormGroup group) => group.Diagnostics.Select(found => At(group.Path, group.Path, found))
        .Concat(group.Fields.SelectMany(field => field.Diagnostics.Select(found => At(field.Path, group.Path, found)).Concat(field.Groups.SelectMany(In))));

    private static FormFault At(string path, string group, Diagnostic found) => new(path, FormTelling.RoomOf(path), group, FaultTelling.Of(found));
}
