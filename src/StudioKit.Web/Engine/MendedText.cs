using StudioKit.Kits;
using StudioKit.Kits.Editing;
using StudioKit.Physics;
using StudioKit.Planning.Changes;

namespace StudioKit.Web.Engine;

/// <summary>Changes written into a kit's text, each value in its own place and style; comments and order stay.</summary>
internal static class MendedText
{
    /// <summary>The text with the changes; none where it cannot take one of them.</summary>
    /// <param name="text">The text.</param>
    /// <param name="changes">The changes, in order.</param>
    /// <param name="kit">The kit that the text was read as.</param>
    public static KitText? Of(KitText text, ValueList<KitChange> changes, KitSpec kit)
    {
        foreach (var change in changes)
        {
            foreach (var setting in KitSettings.Of(change, kit))
            {
                var made = Written(text, setting);
                if (made.Refusal is not null)
                {
                    return null;
                }

                text = made.After;
            }

            kit = change.Apply(kit);
        }

        return text;
    }

    // A quantity is written in the unit that stands there.
    private static KitEditResult Written(KitText text, KitSetting setting) => (setting.Value, text.Find(setting.Path)) switch
    {
        (KitValue.Scalar to, { Value: KitValue.Scalar now }) => text.Set(setting.Path, WrittenQuantity.Like(now.Text, to.Text)),
        _ => SettingWriter.Write(text, setting),
    };
}
