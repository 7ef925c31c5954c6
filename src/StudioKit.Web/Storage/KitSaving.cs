using StudioKit.Web.Editing;

namespace StudioKit.Web.Storage;

/// <summary>Saves the kit in hand as it is changed. Where it went different ways here and in another tab, what was changed here becomes a kit of its own.</summary>
/// <param name="desk">Where the kit is changed.</param>
/// <param name="hand">How it stands with this device.</param>
/// <param name="store">The kits on this device.</param>
/// <param name="tabs">The other tabs.</param>
internal sealed class KitSaving(Desk desk, KitInHand hand, IKitStore store, IKitTabs tabs)
{
    /// <summary>Tells the user something that happened without being asked for.</summary>
    public Action<KeepingNotice>? Noticed { get; set; }

    /// <summary>What is being saved.</summary>
    public Task Running { get; private set; } = Task.CompletedTask;

    /// <summary>Saves what is in hand now.</summary>
    /// <returns>When it is done.</returns>
    public Task Begin() => Running = SaveAsync();

    /// <summary>Keeps a new kit and opens it.</summary>
    /// <param name="name">The name that it would have best.</param>
    /// <param name="text">Its text.</param>
    /// <param name="beside">What lies beside it.</param>
    /// <returns>The name that it has.</returns>
    public async Task<string> AddAsync(string name, string text, KitBeside beside)
    {
        try
        {
            var kit = await store.AddAsync(name, text, beside.Write());
            await tabs.HoldAsync(kit.Id);
            await hand.ShowAsync(kit, KeepingState.Saved);
            return kit.Name;
        }
        catch (KeepingException trouble)
        {
            await hand.ShowUnkeptAsync(name, text, trouble.Trouble, beside);
            return name;
        }
    }

    /// <summary>Shows what the device has of the kit.</summary>
    /// <param name="state">How it is kept.</param>
    public async Task ShowNewestAsync(KeepingState state)
    {
        if (await store.LoadAsync(hand.Id) is { } newest && newest.Text != desk.Kit?.Text)
        {
            await hand.ShowAsync(newest, state);
        }
        else
        {
            hand.Say(state);
        }
    }

    /// <summary>Brings together what is here and what the device has: the kit is in this tab's hand now, or proved to be newer than was known here.</summary>
    public async Task ReconcileAsync()
    {
        var (mine, wasKept) = (desk.Kit!.Text, hand.Kept);
        if (mine == wasKept)
        {
            await ShowNewestAsync(KeepingState.Saved);
            return;
        }

        var newest = await store.LoadAsync(hand.Id);
        if (newest is null || newest.Text == wasKept)
        {
            hand.Say(KeepingState.Saving);
            await SaveAsync();
            return;
        }

        var name = desk.Kit.FileName;
        var copy = await AddAsync(name, mine, desk.Kit.Beside);
        Noticed?.Invoke(new KeepingNotice(KeepingNoticeKind.KeptAsCopy, name, copy));
    }

    private async Task SaveAsync()
    {
        if (hand.State == KeepingState.Elsewhere)
        {
            hand.Say(KeepingState.Elsewhere);
            return;
        }

        var (kit, text) = (desk.Kit!, desk.Kit!.Text);
        hand.Say(KeepingState.Saving);
        await hand.TryAsync(async () =>
        {
            switch (hand.Id.Length == 0 ? SaveOutcome.Gone : await store.SaveAsync(hand.Id, text))
            {
                case SaveOutcome.Saved:
                    hand.Keep(kit, text);
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

    private async Task KeepAnewAsync(KitDocument kit, string text)
    {
        await hand.KeepAsAsync(kit, await store.AddAsync(kit.FileName, text, kit.Beside.Write()) with { Text = text });
        if (kit.Text != text)
        {
            await SaveAsync();
        }
    }
}
