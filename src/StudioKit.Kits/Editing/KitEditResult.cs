namespace StudioKit.Kits.Editing;

/// <summary>What came of changing a kit's text.</summary>
/// <param name="Before">The text before.</param>
/// <param name="After">The text with the change; the one before where it was refused.</param>
/// <param name="Edit">The change, for an editor that holds the text itself.</param>
/// <param name="Refusal">Why it was refused; none where it was made.</param>
public sealed record KitEditResult(KitText Before, KitText After, TextEdit Edit, KitEditRefusal? Refusal)
{
    /// <summary>Whether the text has what was asked for.</summary>
    public bool IsDone => Refusal is null;

    /// <summary>The change that takes it back.</summary>
    public TextEdit Inverse => Edit.InverseIn(Before.Text);
}
