using StudioKit.Web.Storage;

namespace StudioKit.Web.Tests.Storage;

/// <summary>One tab's view of the shared device.</summary>
internal sealed class DeviceTab(SharedDevice device) : IKitStore, IKitTabs
{
    private readonly Dictionary<string, int> _known = new(StringComparer.Ordinal);
    private Action<TabNews> _told = _ => { };

    public string WaitsFor { get; private set; } = "";

    /// <summary>Whether the browser was told to ask before the tab is closed.</summary>
    public bool IsGuarded { get; private set; }

    /// <summary>What writing to the device waits for; nothing where it is quick.</summary>
    public Task Slow { get; set; } = Task.CompletedTask;

    public void Hear(TabNews news) => _told(news);

    public Task<IReadOnlyList<KeptKitLine>> ListAsync() => Task.FromResult<IReadOnlyList<KeptKitLine>>(
        [.. device.All.Select(kit => new KeptKitLine(kit.Kit.Id, kit.Kit.Name, "", 1, kit.IsThrownAway))]);

    public Task<KeptKit?> LoadAsync(string id)
    {
        if (device.Find(id) is not { } found)
        {
            return Task.FromResult<KeptKit?>(null);
        }

        _known[id] = found.Revision;
        return Task.FromResult<KeptKit?>(found.Kit);
    }

    public Task<string?> TextAsync(string id) => Task.FromResult(device.Find(id)?.Kit.Text);

    public Task<string> BesideAsync(string id) => Task.FromResult(device.Find(id)?.Kit.Beside ?? "");

    public Task KeepBesideAsync(string id, string beside)
    {
        var (kit, revision) = device.Find(id)!.Value;
        device.Put(kit with { Beside = beside }, revision, isThrownAway: false);
        return Task.CompletedTask;
    }

    public Task<KeptKit> AddAsync(string name, string text, string beside = "")
    {
        var kit = device.Add(name, text, beside);
        _known[kit.Id] = 1;
        device.Tell(this, TabNewsKind.Changed, kit.Id);
        return Task.FromResult(kit);
    }

    public async Task<SaveOutcome> SaveAsync(string id, string text)
    {
        await Slow;
        if (device.Find(id) is not { } found)
        {
            return SaveOutcome.Gone;
        }

        if (found.Revision != _known.GetValueOrDefault(id))
        {
            return SaveOutcome.Newer;
        }

        device.Put(found.Kit with { Text = text }, found.Revision + 1, isThrownAway: false);
        _known[id] = found.Revision + 1;
        device.Tell(this, TabNewsKind.Changed, id);
        return SaveOutcome.Saved;
    }

    public Task<string> RenameAsync(string id, string name)
    {
        var (kit, revision) = device.Find(id)!.Value;
        device.Put(kit with { Name = name }, revision, isThrownAway: false);
        return Task.FromResult(name);
    }

    public Task ThrowAwayAsync(string id) => Throw(id, isThrownAway: true);

    public Task TakeBackAsync(string id) => Throw(id, isThrownAway: false);

    public Task ClearOutAsync() => Task.CompletedTask;

    public Task<string> LastAsync() => device.Refusal == KeepingTrouble.NewerPage ? Task.FromException<string>(new KeepingException(KeepingTrouble.NewerPage)) : Task.FromResult(device.Last);

    public void SetLast(string id) => device.Last = id;

    public Task<StorageRoom> RoomAsync() => Task.FromResult(new StorageRoom(0, 0, IsPromised: false));

    public Task<bool> AskToKeepAsync() => Task.FromResult(false);

    public Task ListenAsync(Action<TabNews> told)
    {
        _told = told;
        return Task.CompletedTask;
    }

    public Task<bool> HoldAsync(string id)
    {
        WaitsFor = "";
        device.LetGo(this);
        var isFree = device.Take(this, id);
        WaitsFor = isFree ? "" : id;
        return Task.FromResult(isFree);
    }

    public Task TakeOverAsync(string id)
    {
        WaitsFor = "";
        device.Tell(this, TabNewsKind.Asked, id);
        if (!device.Take(this, id))
        {
            device.Steal(this, id);
        }

        return Task.CompletedTask;
    }

    public void HandOver(string id)
    {
        device.LetGo(this);
        WaitsFor = id;
    }

    public string MarkedOpening() => device.Marked;

    public void MarkOpening(string id) => device.Marked = id;

    public void Guard(bool unsaved) => IsGuarded = unsaved;

    private Task Throw(string id, bool isThrownAway)
    {
        var (kit, revision) = device.Find(id)!.Value;
        device.Put(kit, revision, isThrownAway);
        return Task.CompletedTask;
    }
}
