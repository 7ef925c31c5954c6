namespace StudioKit.Web.Storage;

/// <summary>The kits on this device. Every call can fail with a <see cref="KeepingException"/>; then nothing was changed.</summary>
public interface IKitStore
{
    /// <summary>All kits, the one changed last first; those that were thrown away, too.</summary>
    public Task<IReadOnlyList<KeptKitLine>> ListAsync();

    /// <summary>A kit as it is now, to be worked on: what is saved later is measured against this state.</summary>
    /// <param name="id">What it is kept under.</param>
    /// <returns>The kit; none where it is no more.</returns>
    public Task<KeptKit?> LoadAsync(string id);

    /// <summary>A kit's text as it is now, to be looked at only.</summary>
    /// <param name="id">What it is kept under.</param>
    /// <returns>The text; none where the kit is no more.</returns>
    public Task<string?> TextAsync(string id);

    /// <summary>Keeps a new kit, under a name that no other has.</summary>
    /// <param name="name">The name that it would have best.</param>
    /// <param name="text">Its text.</param>
    /// <param name="beside">What lies beside it, as it is written; empty for nothing.</param>
    public Task<KeptKit> AddAsync(string name, string text, string beside = "");

    /// <summary>What lies beside a kit.</summary>
    /// <param name="id">What the kit is kept under.</param>
    /// <returns>As it was written; empty for nothing.</returns>
    public Task<string> BesideAsync(string id);

    /// <summary>Keeps what lies beside a kit; the kit's own text stays as it is.</summary>
    /// <param name="id">What the kit is kept under.</param>
    /// <param name="beside">As it is written; empty for nothing.</param>
    public Task KeepBesideAsync(string id, string beside);

    /// <summary>Saves a changed text, unless another tab saved a newer state than the one last loaded or saved here.</summary>
    /// <param name="id">What the kit is kept under.</param>
    /// <param name="text">Its text.</param>
    public Task<SaveOutcome> SaveAsync(string id, string text);

    /// <summary>Gives a kit another name.</summary>
    /// <param name="id">What it is kept under.</param>
    /// <param name="name">The name.</param>
    /// <returns>The name that it has now; another one where that was taken.</returns>
    public Task<string> RenameAsync(string id, string name);

    /// <summary>Throws a kit away; it can be taken back for a month.</summary>
    /// <param name="id">What it is kept under.</param>
    public Task ThrowAwayAsync(string id);

    /// <summary>Takes a kit back that was thrown away.</summary>
    /// <param name="id">What it is kept under.</param>
    public Task TakeBackAsync(string id);

    /// <summary>Clears out what was thrown away long ago.</summary>
    public Task ClearOutAsync();

    /// <summary>The kit that was opened last; empty for none.</summary>
    public Task<string> LastAsync();

    /// <summary>Notes which kit was opened last.</summary>
    /// <param name="id">What it is kept under.</param>
    public void SetLast(string id);

    /// <summary>What room the browser gives.</summary>
    public Task<StorageRoom> RoomAsync();

    /// <summary>Asks the browser to clear nothing away by itself.</summary>
    /// <returns>Whether it promised.</returns>
    public Task<bool> AskToKeepAsync();
}
