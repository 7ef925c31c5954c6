namespace StudioKit.Web.Storage;

/// <summary>A file that the user opened, as it is.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Base64">Its bytes, or as many as tell that they are too many.</param>
/// <param name="Trouble">Why it could not be read; empty where it could.</param>
public sealed record OpenedFile(string Name, string Base64, string Trouble)
{
    /// <summary>Where it lies in its archive, with folders; its name where it comes by itself.</summary>
    public string Path { get; init; } = Name;
}
