using StudioKit.Web.Storage;

namespace StudioKit.Web.Tests.Storage;

/// <summary>A device that several tabs share, in memory; it refuses what it is told to refuse. What a database does in one transaction is one call here.</summary>
internal sealed class SharedDevice
{
    private readonly Dictionary<string, (KeptKit Kit, int Revision, bool IsThrownAway)> _kits = new(StringComparer.Ordinal);
    private readonly Dictionary<string, DeviceTab> _holders = new(StringComparer.Ordinal);
    private readonly List<DeviceTab> _tabs = [];

    /// <summary>Why nothing can be written; none where it can.</summary>
    public KeepingTrouble? Refusal { get; set; }

    public string Last { get; set; } = "";

    public string Marked { get; set; } = "";

    public IReadOnlyDictionary<string, string> Texts => _kits.Values.Where(kit => !kit.IsThrownAway).ToDictionary(kit => kit.Kit.Name, kit => kit.Kit.Text, StringComparer.Ordinal);

    public DeviceTab Tab()
    {
        var tab = new DeviceTab(this);
        _tabs.Add(tab);
        return tab;
    }

    public IEnumerable<(KeptKit Kit, int Revision, bool IsThrownAway)> All => _kits.Values;

    public (KeptKit Kit, int Revision)? Find(string id) => _kits.TryGetValue(id, out var found) ? (found.Kit, found.Revision) : null;

    public KeptKit Add(string name, string text, string beside = "")
    {
        Refuse();
        var free = name;
        for (var number = 2; Texts.ContainsKey(free); number++)
        {
            free = FormattableString.Invariant($"{Path.GetFileNameWithoutExtension(name)} ({number}){Path.GetExtension(name)}");
        }

        var kit = new KeptKit(FormattableString.Invariant($"kit-{_kits.Count}"), free, text) { Beside = beside };
        _kits[kit.Id] = (kit, 1, false);
        return kit;
    }

    public void Put(KeptKit kit, int revision, bool isThrownAway)
    {
        Refuse();
        _kits[kit.Id] = (kit, revision, isThrownAway);
    }

    public void Remove(string id) => _kits.Remove(id);

    public void Tell(DeviceTab from, TabNewsKind kind, string id)
    {
        foreach (var tab in _tabs.Where(tab => tab != from).ToList())
        {
            tab.Hear(new TabNews(kind, id));
        }
    }

    public bool Take(DeviceTab tab, string id) => _holders.TryAdd(id, tab) || _holders[id] == tab;

    public void Steal(DeviceTab tab, string id)
    {
        _holders.Remove(id, out var before);
        _holders[id] = tab;
        before?.Hear(new TabNews(TabNewsKind.Lost, id));
    }

    public void LetGo(DeviceTab tab)
    {
        foreach (var id in _holders.Where(held => held.Value == tab).Select(held => held.Key).ToList())
        {
            _holders.Remove(id);
            if (_tabs.Find(other => other != tab && other.WaitsFor == id) is { } next)
            {
                _holders[id] = next;
                next.Hear(new TabNews(TabNewsKind.Gained, id));
            }
        }
    }

    /// <summary>A tab is gone without a word.</summary>
    public void Lose(DeviceTab tab)
    {
        _tabs.Remove(tab);
        LetGo(tab);
    }

    private void Refuse()
    {
        if (Refusal is { } why)
        {
            throw new KeepingException(why);
        }
    }
}
