namespace StudioKit.Web.Storage;

/// <summary>Files of this device.</summary>
public interface IDeviceFiles
{
    /// <summary>Begins to wait for files that are dropped on the page.</summary>
    /// <param name="dropped">Given what was dropped.</param>
    public Task ListenAsync(Action<IReadOnlyList<OpenedFile>> dropped);

    /// <summary>Lets the user pick files.</summary>
    /// <returns>The files, those of archives one by one; none where nothing was picked.</returns>
    public Task<IReadOnlyList<OpenedFile>> PickAsync();

    /// <summary>Writes a file into the browser's folder for downloads.</summary>
    /// <param name="name">File name.</param>
    /// <param name="text">What is written.</param>
    public void Download(string name, string text);

    /// <summary>Writes a kit with what lies beside it into one archive.</summary>
    /// <param name="name">The kit's file name.</param>
    /// <param name="text">Its text.</param>
    /// <param name="beside">What lies beside it, as it is written.</param>
    public void DownloadTogether(string name, string text, string beside);

    /// <summary>Whether the user can choose where a file is written.</summary>
    public bool CanChoosePlace { get; }

    /// <summary>Writes a kit where the user chooses, in one archive with what lies beside it where anything does.</summary>
    /// <param name="name">The kit's file name.</param>
    /// <param name="text">Its text.</param>
    /// <param name="beside">What lies beside it, as it is written; empty where nothing does.</param>
    /// <returns>Whether it was written.</returns>
    /// <exception cref="KeepingException">It could not be written.</exception>
    public Task<bool> SaveInPlaceAsync(string name, string text, string beside);

    /// <summary>Writes all kits on this device, and what is kept with them, into one archive.</summary>
    /// <param name="name">File name.</param>
    /// <param name="more">Texts that are kept with the kits, by their names in the archive.</param>
    /// <returns>How many kits are in it.</returns>
    /// <exception cref="KeepingException">They could not be read.</exception>
    public Task<int> DownloadAllAsync(string name, IReadOnlyDictionary<string, string> more);
}
