using StudioKit.Web.Editing;

namespace StudioKit.Web.Storage;

/// <summary>
/// Keeps the kit on the desk on this device: every change is saved as it is made, unless another tab works on the same kit. Nothing of another tab is ever replaced, and nothing of this
/// one is given up: where the two went different ways, what was changed here becomes a kit of its own.
/// </summary>
public sealed class KitKeeper
{
    private readonly Desk _desk;
    private readonly IKitStore _store;
    private readonly IKitTabs _tabs;
    private readonly KitInHand _hand;
    private readonly KitSaving _saving;
    private readonly TabTalk _talk;

    /// <summary>Keeps what lies on a desk.</summary>
    /// <param name="desk">Where the kit is changed.</param>
    /// <param name="store">The kits on this device.</param>
    /// <param name="tabs">The other tabs.</param>
    public KitKeeper(Desk desk, IKitStore store, IKitTabs tabs)
    {
        (_desk, _store, _tabs) = (desk, store, tabs);
        _hand = new KitInHand(desk, store, tabs);
        _saving = new KitSaving(desk, _hand, store, tabs);
        _talk = new TabTalk(_hand, _saving, tabs);
        _hand.Changed += (_, change) => Changed?.Invoke(this, change);
    }

    /// <summary>How the kit is kept changed.</summary>
    public event EventHandler? Changed;

    /// <summary>The list of kits on this device changed.</summary>
    public event EventHandler? ListChanged;

    /// <summary>Tells the user something that happened without being asked for.</summary>
    public Action<KeepingNotice>? Noticed
    {
        get => _saving.Noticed;
        set => _saving.Noticed = value;
    }

    /// <summary>How the kit in hand is kept.</summary>
    public KeepingState State => _hand.State;

    /// <summary>Why it cannot be saved, where it cannot.</summary>
    public KeepingTrouble Trouble => _hand.Trouble;

    /// <summary>What the kit in hand is kept under; empty where it is not kept.</summary>
    public string Id => _hand.Id;

    /// <summary>Name of the kit in hand; empty where there is none.</summary>
    public string Name => _desk.Kit?.FileName ?? "";

    /// <summary>Whether something of the kit in hand would be lost with the tab.</summary>
    public bool IsUnsaved => _hand.IsUnsaved;

    /// <summary>Begins to keep: opens the kit that was open last, or a newcomer's first one.</summary>
    /// <param name="first">A newcomer's first kit.</param>
    /// <returns>The kit over which the page died last time, which is not opened again by itself; none where all is well.</returns>
    public async Task<KeepingNotice?> StartAsync(Func<Task<(string Name, string Text)>> first)
    {
        ArgumentNullException.ThrowIfNull(first);
        _desk.Changed += (_, _) => Follow();
        await _tabs.ListenAsync(news => _ = HearAsync(news));
        try
        {
            var id = await LastAsync();
            if (_tabs.MarkedOpening() is { Length: > 0 } marked && await _store.LoadAsync(marked) is { } died)
            {
                _tabs.MarkOpening("");
                return new KeepingNotice(KeepingNoticeKind.DiedOver, died.Name, Id: died.Id);
            }

            if (id.Length > 0)
            {
                await OpenAsync(id);
            }
            else
            {
                var (name, text) = await first();
                await AddAsync(name, text);
            }
        }
        catch (KeepingException trouble) when (_desk.Kit is null)
        {
            var (name, text) = await first();
            await _hand.ShowUnkeptAsync(name, text, trouble.Trouble);
        }

        return null;
    }

    /// <summary>Opens a kit of this device.</summary>
    /// <param name="id">What it is kept under.</param>
    /// <exception cref="KeepingException">It cannot be read.</exception>
    public async Task OpenAsync(string id)
    {
        var isFree = await _tabs.HoldAsync(id);
        if (await _store.LoadAsync(id) is { } kit)
        {
            await _hand.ShowAsync(kit, isFree ? KeepingState.Saved : KeepingState.Elsewhere);
        }
    }

    /// <summary>Keeps a new kit and opens it.</summary>
    /// <param name="name">The name that it would have best.</param>
    /// <param name="text">Its text.</param>
    /// <param name="beside">What lies beside it; nothing where left out.</param>
    /// <returns>The name that it has.</returns>
    public Task<string> AddAsync(string name, string text, KitBeside? beside = null) => _saving.AddAsync(name, text, beside ?? KitBeside.Nothing);

    /// <summary>Keeps what lies beside the kit in hand, unless another tab works on that.</summary>
    public Task KeepBesideAsync() => Id.Length > 0 && State != KeepingState.Elsewhere && _desk.Kit is { } kit
        ? _hand.TryAsync(() => _store.KeepBesideAsync(Id, kit.Beside.Write()))
        : Task.CompletedTask;

    /// <summary>Tries once more to save what could not be saved.</summary>
    public Task RetryAsync() => _saving.Begin();

    /// <summary>Works on the kit here, where another tab had it.</summary>
    public Task TakeOverAsync() => _hand.TryAsync(async () =>
    {
        await _tabs.TakeOverAsync(Id);
        await _saving.ReconcileAsync();
    });

    /// <summary>Works on with a copy, and leaves the kit to the other tab.</summary>
    /// <returns>The copy's name.</returns>
    public Task<string> CopyAsync() => AddAsync(Name, _desk.Kit!.Text, _desk.Kit.Beside);

    /// <summary>Gives a kit another name.</summary>
    /// <param name="id">What it is kept under.</param>
    /// <param name="name">The name.</param>
    /// <exception cref="KeepingException">It cannot be kept.</exception>
    public async Task RenameAsync(string id, string name)
    {
        var given = await _store.RenameAsync(id, KitName.Of(name));
        if (id == Id)
        {
            _desk.Kit?.Rename(given);
            _hand.Say(State);
        }
    }

    /// <summary>Throws a kit away; it can be taken back.</summary>
    /// <param name="id">What it is kept under.</param>
    /// <exception cref="KeepingException">It cannot be done.</exception>
    public async Task ThrowAwayAsync(string id)
    {
        await _store.ThrowAwayAsync(id);
        if (id == Id)
        {
            _hand.Say(KeepingState.ThrownAway);
        }
    }

    /// <summary>Takes a kit back that was thrown away.</summary>
    /// <param name="id">What it is kept under.</param>
    public Task TakeBackAsync(string id) => _hand.TryAsync(async () =>
    {
        await _store.TakeBackAsync(id);
        if (id == Id)
        {
            _hand.Say(KeepingState.Saved);
        }
    });

    private async Task<string> LastAsync()
    {
        await _store.ClearOutAsync();
        var (last, kits) = (await _store.LastAsync(), (await _store.ListAsync()).Where(kit => !kit.IsThrownAway).ToList());
        return (kits.Find(kit => kit.Id == last) ?? kits.FirstOrDefault())?.Id ?? "";
    }

    private void Follow()
    {
        if (_hand.IsNews())
        {
            _ = _saving.Begin();
        }
    }

    private async Task HearAsync(TabNews news)
    {
        if (news.Id == Id)
        {
            await _talk.HeedAsync(news.Kind);
        }

        if (news.Kind == TabNewsKind.Changed)
        {
            ListChanged?.Invoke(this, EventArgs.Empty);
        }
    }
}
