using StudioKit.Kits;
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
            var key = Place(text, change);
            var value = text.Find(key) is { Value: KitValue.Scalar written } ? WrittenQuantity.Like(written.Text, change.Value) : change.Value;
            var made = text.Set(key, value);
            if (made.Refusal is { } refusal)
            {
                return new EditAnswer(request.Text, 0, 0, "", ProblemText.Of(refusal.Message, refusal.Hint));
            }

            text = made.After;
        }

        // Several edits are told as the one stretch that holds them all.
        var edit = TextEdit.Between(request.Text, text.Text);
        return new EditAnswer(text.Text, edit.Start, edit.Length, edit.NewText, "");
    }

    // Where somebody wrote a single value as a list of one it stays a list.
    private static string Place(KitText text, KitChangeLine change) =>
        text.Find(change.Key) is { Value: KitValue.List { Items: [KitValue.Scalar] } } && !change.Value.StartsWith('[') ? change.Key + "[0]" : change.Key;
}
