using StudioKit.Kits.Editing;

namespace StudioKit.Kits.Completing;

/// <summary>The keys and hyphens that hold the line at hand, from the kit itself inwards.</summary>
internal sealed class HolderStack
{
    private readonly List<Holder> _all;

    public HolderStack() => _all = [new Holder(-1, null, isItem: false)];

    private HolderStack(IEnumerable<Holder> all) => _all = [.. all];

    public Holder Top => _all[^1];

    public HolderStack Copy() => new(_all);

    /// <summary>Lets go of all that a line with an indentation is no longer in.</summary>
    public void Leave(int indent, bool isDash)
    {
        while (_all.Count > 1 && (Top.Column > indent || (Top.Column == indent && !(isDash && !Top.IsItem))))
        {
            var isSibling = Top.Column == indent && isDash;
            Pop();
            if (isSibling)
            {
                return;
            }
        }
    }

    public void Pop() => _all.RemoveAt(_all.Count - 1);

    /// <summary>Enters a hyphen.</summary>
    public void EnterItem(int column)
    {
        var facts = Top.Facts;
        Top.Inner ??= column;
        _all.Add(new Holder(column, facts, isItem: true));
    }

    /// <summary>Enters a key.</summary>
    public void EnterKey(int column, string key)
    {
        var facts = Top.Section?.Find(key);
        Top.Inner ??= column;
        _all.Add(new Holder(column, facts, isItem: false));
    }
}
