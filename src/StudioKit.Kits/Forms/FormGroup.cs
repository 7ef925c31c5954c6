using StudioKit.Kits.Editing;
using StudioKit.Physics;

namespace StudioKit.Kits.Forms;

/// <summary>A section of one kit as a form shows it, whether or not it is written.</summary>
/// <param name="Path">Where it stands, e.g. <c>flashes[0]</c>; empty for the whole kit.</param>
/// <param name="Group">What is known of such a section.</param>
/// <param name="Written">How it is written; none where it is not.</param>
/// <param name="Part">Name of the part that it goes by; none where it names none.</param>
/// <param name="Fields">Its fields, in the order in which the kit has them.</param>
/// <param name="Diagnostics">What is wrong with the section as a whole: keys that are missing or unknown, values that contradict each other.</param>
public sealed record FormGroup(
    string Path, KitGroup Group, WrittenValue? Written, string? Part, ValueList<FormField> Fields, ValueList<Diagnostic> Diagnostics)
{
    /// <summary>What to call it: the name that it bears, else what such a section is called.</summary>
    public string Title => Fields.FirstOrDefault(one => one.Field.Key is "name" or "flash" or "kit")?.InEffect ?? Group.Label;
}
