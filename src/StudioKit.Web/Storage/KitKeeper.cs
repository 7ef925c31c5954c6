using StudioKit.Web.Editing;

namespace StudioKit.Web.Storage;

/// <summary>
/// Keeps the kit on the desk on this device: every change is saved as it is made, unless another tab works on the same kit. Nothing of another tab is ever replaced, and nothing of this
/// one is given up: where the two went different ways, what was changed here becomes a kit of its own.
/// </summary>
/// <param name="desk">Where the kit is changed.</param>
/// <param name="store">The kits on this device.</param>
/// <param name="tabs">The other tabs.</param>
public sealed class KitKeeper(Desk desk, IKitStore store, IKitTabs tabs)
{
    private KitDocument? _document;

    // The text that this device has for sure, and the one last handed over to be saved.
    private string _kept = "";
    private string _asked = "";
    private Task _saving = Task.CompletedTask;

    /// <summary>How the kit is kept changed.</summary>
    public event EventHandler? Changed;

    /// <summary>The list of kits on this device changed.</summary>
    public event EventHandler? ListChanged;

    /// <summary>Tells the user something that happened without being asked for.</summary>
    public Action<KeepingNotice>? Noticed { get; set; }

    /// <summary>How the kit in hand is kept.</summary>
    public KeepingState State { get; private set; }

    /// <summary>Why it cannot be saved, where it cannot.</summary>
    public KeepingTrouble Trouble { get; private set; }

    /// <summary>What the kit in hand is kept under; empty where it is not kept.</summary>
    public string Id { get; private set; } = "";

    /// <summary>Name of the kit in hand; empty where there is none.</summary>
    public string Name => desk.Kit?.FileName ?? "";

    /// <summary>Whether something of the kit in hand would be lost with the tab.</summary>
    public bool IsUnsaved => desk.Kit is { } kit && kit.Text != _kept;

    /// <summary>Begins to keep: opens the kit that was open last, or a newcomer's first one.</summary>
    /// <param name="first">A newcomer's first kit.</param>
    /// <returns>The kit over which the page died last time, which is not opened again by itself; none where all is well.</returns>
    public async Task<KeepingNotice?> StartAsync(Func<Task<(string Name, string Text)>> first)
    {
        ArgumentNullException.ThrowIfNull(first);
        desk.Changed += (_, _) => Follow();
        await tabs.ListenAsync(news => _ = HearAsync(news));
        try
        {
            var id = await LastAsync();
            if (tabs.MarkedOpening() is { Length: > 0 } marked && await store.LoadAsync(marked) is { } died)
            {
                tabs.MarkOpening("");
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
        catch (KeepingException trouble) when (desk.Kit is null)
        {
            var (name, text) = await first();
            await WithoutKeeping(name, text, trouble.Trouble);
        }

        return null;
    }

    /// <summary>Opens a kit of this device.</summary>
    /// <param name="id">What it is kept under.</param>
    /// <exception cref="KeepingException">It cannot be read.</exception>
    public async Task OpenAsync(string id)
    {
        var isFree = await tabs.HoldAsync(id);
        if (await store.LoadAsync(id) is { } kit)
        {
            await ShowAsync(kit, isFree ? KeepingState.Saved : KeepingState.Elsewhere);
        }
    }

    /// <summary>Keeps a new kit and opens it.</summary>
    /// <param name="name">The name that it would have best.</param>
    /// <param name="text">Its text.</param>
    /// <returns>The name that it has.</returns>
    public async Task<string> AddAsync(string name, string text)
    {
        try
        {
            var kit = await store.AddAsync(name, text);
            await tabs.HoldAsync(kit.Id);
            await ShowAsync(kit, KeepingState.Saved);
            return kit.Name;
        }
        catch (KeepingException trouble)
        {
            await WithoutKeeping(name, text, trouble.Trouble);
            return name;
        }
    }

    /// <summary>Tries once more to save what could not be saved.</summary>
    public Task RetryAsync() => _saving = SaveAsync();

    /// <summary>Works on the kit here, where another tab had it.</summary>
    public Task TakeOverAsync() => TryAsync(async () =>
    {
        await tabs.TakeOverAsync(Id);
        await ReconcileAsync();
    });

    /// <summary>Works on with a copy, and leaves the kit to the other tab.</summary>
    /// <returns>The copy's name.</returns>
    public Task<string> CopyAsync() => AddAsync(Name, desk.Kit!.Text);

    /// <summary>Gives a kit another name.</summary>
    /// <param name="id">What it is kept under.</param>
    /// <param name="name">The name.</param>
    /// <exception cref="KeepingException">It cannot be kept.</exception>
    public async Task RenameAsync(string id, string name)
    {
        var given = await store.RenameAsync(id, name);
        if (id == Id)
        {
            desk.Kit?.Rename(given);
            Say(State);
        }
    }

    /// <summary>Throws a kit away; it can be taken back.</summary>
    /// <param name="id">What it is kept under.</param>
    /// <exception cref="KeepingException">It cannot be done.</exception>
    public async Task ThrowAwayAsync(string id)
    {
        await store.ThrowAwayAsync(id);
        if (id == Id)
        {
            Say(KeepingState.ThrownAway);
        }
    }

    /// <summary>Takes a kit back that was thrown away.</summary>
    /// <param name="id">What it is kept under.</param>
    public Task TakeBackAsync(string id) => TryAsync(async () =>
    {
        await store.TakeBackAsync(id);
        if (id == Id)
        {
            Say(KeepingState.Saved);
        }
    });

    private async Task<string> LastAsync()
    {
        await store.ClearOutAsync();
        var (last, kits) = (await store.LastAsync(), (await store.ListAsync()).Where(kit => !kit.IsThrownAway).ToList());
        return (kits.Find(kit => kit.Id == last) ?? kits.FirstOrDefault())?.Id ?? "";
    }

    // The kit is marked until it is planned: a page that dies over it is not to die again at the next start.
    private async Task ShowAsync(KeptKit kit, KeepingState state)
    {
        (Id, _kept, _asked, _document) = (kit.Id, kit.Text, kit.Text, new KitDocument(kit.Name, kit.Text));
        store.SetLast(kit.Id);
        tabs.MarkOpening(kit.Id);
        Say(state);
        await desk.OpenAsync(_document);
        if (Id == kit.Id)
        {
            tabs.MarkOpening("");
        }
    }

    private Task WithoutKeeping(string name, string text, KeepingTrouble trouble)
    {
        (Id, _kept, _asked, _document) = ("", "", text, new KitDocument(name, text));
        Trouble = trouble;
        Say(KeepingState.NotSaved);
        return desk.OpenAsync(_document);
    }

    private void Follow()
    {
        if (desk.Kit is not { } kit)
        {
            return;
        }

        if (!ReferenceEquals(kit, _document))
        {
            (Id, _kept, _asked, _document) = ("", "", kit.Text, kit);
            _saving = SaveAsync();
        }
        else if (kit.Text != _asked)
        {
            _asked = kit.Text;
            _saving = SaveAsync();
        }
    }

    private async Task SaveAsync()
    {
        if (State == KeepingState.Elsewhere)
        {
            Say(KeepingState.Elsewhere);
            return;
        }

        var (kit, text) = (desk.Kit!, desk.Kit!.Text);
        Say(KeepingState.Saving);
        await TryAsync(async () =>
        {
            switch (Id.Length == 0 ? SaveOutcome.Gone : await store.SaveAsync(Id, text))
            {
                case SaveOutcome.Saved:
                    Keep(kit, text);
                    break;
                case SaveOutcome.Newer:
                    await ReconcileAsync();
                    break;
                default:
                    await KeepAnewAsync(kit, text);
                    break;
            }
        });
    }

    // What cannot be kept stays in hand, and is said.
    private async Task TryAsync(Func<Task> deed)
    {
        try
        {
            await deed();
        }
        catch (KeepingException trouble)
        {
            Trouble = trouble.Trouble;
            Say(KeepingState.NotSaved);
        }
    }

    private void Keep(KitDocument kit, string text)
    {
        if (ReferenceEquals(kit, desk.Kit))
        {
            _kept = text;
            Say(kit.Text == text ? KeepingState.Saved : KeepingState.Saving);
        }
    }

    private async Task KeepAnewAsync(KitDocument kit, string text)
    {
        var kept = await store.AddAsync(kit.FileName, text);
        (Id, _kept) = (kept.Id, text);
        kit.Rename(kept.Name);
        store.SetLast(Id);
        await tabs.HoldAsync(Id);
        Say(kit.Text == text ? KeepingState.Saved : KeepingState.Saving);
        if (kit.Text != text)
        {
            await SaveAsync();
        }
    }

    private async Task HearAsync(TabNews news)
    {
        if (news.Id == Id)
        {
            await TryAsync(() => HearOwnAsync(news.Kind));
        }

        if (news.Kind == TabNewsKind.Changed)
        {
            ListChanged?.Invoke(this, EventArgs.Empty);
        }
    }

    private async Task HearOwnAsync(TabNewsKind kind)
    {
        switch (kind)
        {
            case TabNewsKind.Changed when State == KeepingState.Elsewhere && !IsUnsaved:
                await ShowNewestAsync(KeepingState.Elsewhere);
                break;
            case TabNewsKind.Asked when State != KeepingState.Elsewhere:
                await _saving;
                tabs.HandOver(Id);
                Say(KeepingState.Elsewhere);
                break;
            case TabNewsKind.Lost:
                Say(KeepingState.Elsewhere);
                break;
            case TabNewsKind.Gained:
                await ReconcileAsync();
                break;
        }
    }

    private async Task ShowNewestAsync(KeepingState state)
    {
        if (await store.LoadAsync(Id) is { } newest && newest.Text != desk.Kit?.Text)
        {
            await ShowAsync(newest, state);
        }
        else
        {
            Say(state);
        }
    }

    // The kit is in this tab's hand now, or proved to be newer than was known here.
    private async Task ReconcileAsync()
    {
        var (mine, wasKept) = (desk.Kit!.Text, _kept);
        if (mine == wasKept)
        {
            await ShowNewestAsync(KeepingState.Saved);
            return;
        }

        var newest = await store.LoadAsync(Id);
        if (newest is null || newest.Text == wasKept)
        {
            Say(KeepingState.Saving);
            await SaveAsync();
            return;
        }

        var name = Name;
        var copy = await AddAsync(name, mine);
        Noticed?.Invoke(new KeepingNotice(KeepingNoticeKind.KeptAsCopy, name, copy));
    }

    private void Say(KeepingState state)
    {
        State = state;
        tabs.Guard(state is KeepingState.NotSaved || (state is KeepingState.Elsewhere && IsUnsaved));
        Changed?.Invoke(this, EventArgs.Empty);
    }
}
