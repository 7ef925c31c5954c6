namespace StudioKit.Web.Storage;

/// <summary>Which tab of this browser works on which kit, so that two do not overwrite one another.</summary>
public interface IKitTabs
{
    /// <summary>Begins to hear what happens in other tabs.</summary>
    /// <param name="told">Told each thing.</param>
    public Task ListenAsync(Action<TabNews> told);

    /// <summary>Takes a kit in hand and lets go of the one before; where another tab has it, waits until that lets go.</summary>
    /// <param name="id">What the kit is kept under.</param>
    /// <returns>Whether it is in this tab's hand now.</returns>
    public Task<bool> HoldAsync(string id);

    /// <summary>Takes a kit in hand that another tab has.</summary>
    /// <param name="id">What the kit is kept under.</param>
    public Task TakeOverAsync(string id);

    /// <summary>Lets another tab have a kit.</summary>
    /// <param name="id">What the kit is kept under.</param>
    public void HandOver(string id);

    /// <summary>The kit over which a page died while it was opening it; empty where none did.</summary>
    public string MarkedOpening();

    /// <summary>Marks a kit as being opened.</summary>
    /// <param name="id">What the kit is kept under; empty when it is open.</param>
    public void MarkOpening(string id);

    /// <summary>Says whether something is not saved, so that the tab is not closed by a slip of the hand.</summary>
    /// <param name="unsaved">Whether something is not saved.</param>
    public void Guard(bool unsaved);
}
