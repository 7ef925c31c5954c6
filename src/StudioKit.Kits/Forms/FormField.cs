using StudioKit.Kits.Editing;
using StudioKit.Physics;

namespace StudioKit.Kits.Forms;

/// <summary>A key of one kit as a form shows it, whether or not it is written.</summary>
/// <param name="Path">Where it stands, e.g. <c>flashes[0].guide-number</c>.</param>
/// <param name="Field">What is known of such a key.</param>
/// <param name="Written">How it is written; none where it is not.</param>
/// <param name="InEffect">The value that a plan goes by, as it would be written, several with commas between; none for groups and where there is none.</param>
/// <param name="Origin">Where that value comes from.</param>
/// <param name="Diagnostics">What is wrong with it.</param>
/// <param name="Groups">The section where it is a group; the entries where it is a list of them.</param>
public sealed record FormField(
    string Path, KitField Field, WrittenValue? Written, string? InEffect, ValueOrigin Origin, ValueList<Diagnostic> Diagnostics, ValueList<FormGroup> Groups)
{
    /// <summary>Whether it must be written and is not, in a section that is.</summary>
    public bool IsMissing { get; init; }
}
