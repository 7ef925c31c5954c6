using StudioKit.Kits.Editing;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Exploring;

/// <summary>Settings of several choices written into one kit's text.</summary>
/// <remarks>
/// Writing a value reads the whole text again, so what each setting does to the text as it stands is worked out once; where several do not touch each other, they
/// are put in together, else one after the other.
/// </remarks>
internal sealed class DesignTexts(KitText text)
{
    private readonly Dictionary<KitSetting, KitEditResult> _alone = [];

    /// <summary>The text as it stands.</summary>
    public KitText Text => text;

    /// <summary>What one setting does to the text as it stands.</summary>
    public KitEditResult Alone(KitSetting setting)
    {
        lock (_alone)
        {
            if (!_alone.TryGetValue(setting, out var made))
            {
                made = SettingWriter.Write(text, setting);
                _alone.Add(setting, made);
            }

            return made;
        }
    }

    /// <summary>The text with settings.</summary>
    /// <returns>The text; none where it cannot take one of them beside the others.</returns>
    public KitText? With(IReadOnlyList<KitSetting> settings)
    {
        var edits = settings.Select(Alone).ToList();
        return edits.Exists(edit => !edit.IsDone) ? null : Together(settings, edits) ?? InTurn(settings);
    }

    private KitText? Together(IReadOnlyList<KitSetting> settings, List<KitEditResult> edits)
    {
        // Two entries gone may leave an empty list, which is more than either alone.
        var gone = settings.Where(setting => setting.Value is null).Select(setting => ParentOf(setting.Path)).ToList();
        if (gone.Distinct(StringComparer.Ordinal).Count() < gone.Count)
        {
            return null;
        }

        var inOrder = edits.Select(edit => edit.Edit).Where(edit => !edit.IsNone).OrderBy(edit => edit.Start).ToList();
        for (var i = 1; i < inOrder.Count; i++)
        {
            if (inOrder[i].Start <= inOrder[i - 1].Start + inOrder[i - 1].Length)
            {
                return null;
            }
        }

        return KitText.Of(Enumerable.Reverse(inOrder).Aggregate(text.Text, (now, edit) => edit.ApplyTo(now)));
    }

    // First what is written, by its place in the text as it stands; then what goes, from the end, so that no place before it moves.
    private KitText? InTurn(IReadOnlyList<KitSetting> settings)
    {
        var now = text;
        var gone = settings.Where(setting => setting.Value is null).OrderByDescending(setting => text.Find(setting.Path)?.Start ?? -1);
        foreach (var setting in settings.Where(setting => setting.Value is not null).Concat(gone))
        {
            var made = SettingWriter.Write(now, setting);
            if (!made.IsDone)
            {
                return null;
            }

            now = made.After;
        }

        return now;
    }

    private static string ParentOf(string path) => path[..Math.Max(0, path.LastIndexOfAny(['.', '[']))];
}
