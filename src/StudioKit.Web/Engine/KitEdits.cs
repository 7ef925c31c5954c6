using StudioKit.Kits.Editing;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Writes values into a kit's text: all of them, or none.</summary>
internal static class KitEdits
{
    /// <summary>The text with the values.</summary>
    public static EditAnswer Answer(EditRequest request)
    {
        var text = KitText.Of(request.Text);
        foreach (var change in request.Changes)
        {
            var value = text.Find(change.Key) is { Value: KitValue.Scalar written } ? LengthInStyle.Of(written.Text, change.Value) : change.Value;
            var made = text.Set(change.Key, value);
            if (made.Refusal is { } refusal)
            {
                return new EditAnswer(request.Text, 0, 0, "", ProblemText.Of(refusal.Message, refusal.Hint));
            }

            text = made.After;
        }

        return Between(request.Text, text.Text);
    }

    // Several edits are told as the one stretch that holds them all.
    private static EditAnswer Between(string before, string after)
    {
        var head = before.AsSpan().CommonPrefixLength(after);
        var tail = 0;
        while (tail < Math.Min(before.Length, after.Length) - head && before[^(tail + 1)] == after[^(tail + 1)])
        {
            tail++;
        }

        return new EditAnswer(after, head, before.Length - head - tail, after[head..^tail], "");
    }
}
