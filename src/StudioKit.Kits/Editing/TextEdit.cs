namespace StudioKit.Kits.Editing;

/// <summary>One change of a text: a stretch of it gives way to another.</summary>
/// <param name="Start">Where it begins, in UTF-16 units from 0 [1].</param>
/// <param name="Length">How much goes, in UTF-16 units [1]; ≥ 0.</param>
/// <param name="NewText">What comes in its place.</param>
public sealed record TextEdit(int Start, int Length, string NewText)
{
    /// <summary>Leaves a text as it is.</summary>
    public static TextEdit None { get; } = new(0, 0, "");

    /// <summary>Whether it leaves every text as it is.</summary>
    public bool IsNone => Length == 0 && NewText.Length == 0;

    /// <summary>The text with the change.</summary>
    /// <param name="text">The text.</param>
    /// <exception cref="ArgumentNullException">There is no text.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stretch lies outside the text.</exception>
    public string ApplyTo(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return string.Concat(text.AsSpan(0, Start), NewText, text.AsSpan(Start + Length));
    }

    /// <summary>The change that takes this one back.</summary>
    /// <param name="text">The text before this change.</param>
    /// <exception cref="ArgumentNullException">There is no text.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stretch lies outside the text.</exception>
    public TextEdit InverseIn(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new TextEdit(Start, NewText.Length, text.Substring(Start, Length));
    }

    /// <summary>The smallest change that makes one text of another.</summary>
    /// <param name="before">The one.</param>
    /// <param name="after">The other.</param>
    /// <exception cref="ArgumentNullException">There is no text.</exception>
    public static TextEdit Between(string before, string after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var shorter = Math.Min(before.Length, after.Length);
        var head = before.AsSpan().CommonPrefixLength(after);
        var tail = 0;
        while (tail < shorter - head && before[^(tail + 1)] == after[^(tail + 1)])
        {
            tail++;
        }

        return before == after ? None : new TextEdit(head, before.Length - head - tail, after[head..^tail]);
    }
}
