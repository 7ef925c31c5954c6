namespace StudioKit.Web.Storage;

/// <summary>Kits that come with the page, read from beside it.</summary>
/// <param name="client">Reads files from where the page came from; offline from its copy.</param>
internal sealed class KitFiles(HttpClient client) : IKitFiles
{
    /// <inheritdoc/>
    public Task<string> DemoAsync(string name) => client.GetStringAsync(new Uri($"kits/{name}", UriKind.Relative));
}
