namespace StudioKit.Web.Storage;

/// <summary>Heeds what other tabs do with the kit in hand: one tab at a time saves it, the others show what it saved.</summary>
/// <param name="hand">How the kit stands with this device.</param>
/// <param name="saving">What saves it.</param>
/// <param name="tabs">The other tabs.</param>
internal sealed class TabTalk(KitInHand hand, KitSaving saving, IKitTabs tabs)
{
    /// <summary>Does what a piece of news of the kit in hand asks for.</summary>
    /// <param name="kind">What happened.</param>
    public Task HeedAsync(TabNewsKind kind) => hand.TryAsync(() => kind switch
    {
        TabNewsKind.Changed when hand.State == KeepingState.Elsewhere && !hand.IsUnsaved => saving.ShowNewestAsync(KeepingState.Elsewhere),
        TabNewsKind.Asked when hand.State != KeepingState.Elsewhere => HandOverAsync(),
        TabNewsKind.Lost => LoseAsync(),
        TabNewsKind.Gained => saving.ReconcileAsync(),
        _ => Task.CompletedTask,
    });

    // What is being saved is saved before another tab goes on with it.
    private async Task HandOverAsync()
    {
        await saving.Running;
        tabs.HandOver(hand.Id);
        hand.Say(KeepingState.Elsewhere);
    }

    private Task LoseAsync()
    {
        hand.Say(KeepingState.Elsewhere);
        return Task.CompletedTask;
    }
}
