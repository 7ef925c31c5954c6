namespace StudioKit.Web.Storage;

/// <summary>The page's own copy on this device, by which it works without a network.</summary>
public interface IPageCopy
{
    /// <summary>Begins to hear how the copy is.</summary>
    /// <param name="told">Told each state.</param>
    public Task ListenAsync(Action<PageCopyState> told);

    /// <summary>Takes the newer page that lies ready; the page is loaded anew.</summary>
    public void TakeNewer();
}
