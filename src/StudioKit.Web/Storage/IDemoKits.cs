namespace StudioKit.Web.Storage;

/// <summary>Kits that come with the page.</summary>
public interface IDemoKits
{
    /// <summary>Their file names; the first one is shown to a newcomer.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>Text of one of them.</summary>
    /// <param name="name">File name.</param>
    /// <exception cref="IOException">It could not be fetched.</exception>
    public Task<string> TextAsync(string name);
}
