using StudioKit.Web.Editing;

namespace StudioKit.Web.Storage;

/// <summary>How the kit on the desk stands with this device: what it is kept under, and what of it the device has for sure.</summary>
/// <param name="desk">Where the kit is changed.</param>
/// <param name="store">The kits on this device.</param>
/// <param name="tabs">The other tabs.</param>
internal sealed class KitInHand(Desk desk, IKitStore store, IKitTabs tabs)
{
    private KitDocument? _document;

    // The text that was last handed over to be saved.
    private string _asked = "";

    /// <summary>How the kit is kept changed.</summary>
    public event EventHandler? Changed;

    /// <summary>How it is kept.</summary>
    public KeepingState State { get; private set; }

    /// <summary>Why it cannot be saved, where it cannot.</summary>
    public KeepingTrouble Trouble { get; private set; }

    /// <summary>What it is kept under; empty where it is not kept.</summary>
    public string Id { get; private set; } = "";

    /// <summary>The text that the device has for sure.</summary>
    public string Kept { get; private set; } = "";

    /// <summary>Whether something of it would be lost with the tab.</summary>
    public bool IsUnsaved => desk.Kit is { } kit && kit.Text != Kept;

    /// <summary>Puts a kept kit on the desk. It is marked until it is planned: a page that dies over it is not to die again at the next start.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="state">How it is kept.</param>
    public async Task ShowAsync(KeptKit kit, KeepingState state)
    {
        (Id, Kept, _asked, _document) = (kit.Id, kit.Text, kit.Text, new KitDocument(kit.Name, kit.Text) { Beside = KitBeside.Read(kit.Beside) });
        store.SetLast(kit.Id);
        tabs.MarkOpening(kit.Id);
        Say(state);
        await desk.OpenAsync(_document);
        if (Id == kit.Id)
        {
            tabs.MarkOpening("");
        }
    }

    /// <summary>Puts a kit on the desk that this device cannot keep.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="text">Its text.</param>
    /// <param name="trouble">Why it cannot.</param>
    /// <param name="beside">What lies beside it; nothing where left out.</param>
    public Task ShowUnkeptAsync(string name, string text, KeepingTrouble trouble, KitBeside? beside = null)
    {
        (Id, Kept, _asked, _document) = ("", "", text, new KitDocument(name, text) { Beside = beside ?? KitBeside.Nothing });
        Trouble = trouble;
        Say(KeepingState.NotSaved);
        return desk.OpenAsync(_document);
    }

    /// <summary>Takes note of what lies on the desk.</summary>
    /// <returns>Whether it is something that was not handed over to be saved yet.</returns>
    public bool IsNews()
    {
        if (desk.Kit is not { } kit || (ReferenceEquals(kit, _document) && kit.Text == _asked))
        {
            return false;
        }

        if (!ReferenceEquals(kit, _document))
        {
            (Id, Kept, _document) = ("", "", kit);
        }

        _asked = kit.Text;
        return true;
    }

    /// <summary>Notes that a text is on the device, unless another kit was taken in hand meanwhile.</summary>
    /// <param name="kit">Whose text it is.</param>
    /// <param name="text">The text.</param>
    public void Keep(KitDocument kit, string text)
    {
        if (ReferenceEquals(kit, desk.Kit))
        {
            Kept = text;
            Say(kit.Text == text ? KeepingState.Saved : KeepingState.Saving);
        }
    }

    /// <summary>Notes that a kit is kept under another name from now on.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="kept">What it is kept as.</param>
    public async Task KeepAsAsync(KitDocument kit, KeptKit kept)
    {
        (Id, Kept) = (kept.Id, kept.Text);
        kit.Rename(kept.Name);
        store.SetLast(Id);
        await tabs.HoldAsync(Id);
        Say(kit.Text == kept.Text ? KeepingState.Saved : KeepingState.Saving);
    }

    /// <summary>Does something with the device; what cannot be kept stays in hand, and is said.</summary>
    /// <param name="deed">What is done.</param>
    public async Task TryAsync(Func<Task> deed)
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

    /// <summary>Says how the kit is kept.</summary>
    /// <param name="state">How.</param>
    public void Say(KeepingState state)
    {
        State = state;
        tabs.Guard(state is KeepingState.NotSaved || (state is KeepingState.Elsewhere && IsUnsaved));
        Changed?.Invoke(this, EventArgs.Empty);
    }
}
