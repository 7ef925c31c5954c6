using System.Globalization;
using StudioKit.Kits.Editing;

namespace StudioKit.Planning.Changes;

/// <summary>Writes settings into a kit's text, each value in its own place; comments and order stay.</summary>
public static class SettingWriter
{
    /// <summary>The text with a setting; unchanged where it takes away what is not there.</summary>
    /// <param name="text">The text.</param>
    /// <param name="setting">The setting.</param>
    /// <exception cref="ArgumentNullException">There is no text or no setting.</exception>
    public static KitEditResult Write(KitText text, KitSetting setting)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(setting);
        return (setting.Value, text.Find(setting.Path)) switch
        {
            (null, null) => new KitEditResult(text, text, TextEdit.None, null),
            (null, _) => text.Remove(setting.Path),
            (KitValue.Section entry, null) when setting.Path.EndsWith(']') => Added(text, setting.Path, entry),
            _ => text.Set(setting.Path, setting.Value),
        };
    }

    private static KitEditResult Added(KitText text, string path, KitValue entry)
    {
        var bracket = path.LastIndexOf('[');
        return text.Insert(path[..bracket], int.Parse(path[(bracket + 1)..^1], CultureInfo.InvariantCulture), entry);
    }
}
