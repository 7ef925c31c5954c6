namespace StudioKit.Web.Storage;

/// <summary>Kits that come with the page, read from beside it.</summary>
/// <param name="client">Reads files from where the page came from; offline from its copy.</param>
internal sealed class DemoKits(HttpClient client) : IDemoKits
{
    /// <inheritdoc/>
    public IReadOnlyList<string> Names { get; } = ["fen-edge.yaml", "heath-ultralight.yaml", "tall-stand.yaml"];

    /// <inheritdoc/>
    public Task<string> TextAsync(string name) => client.GetStringAsync(new Uri($"kits/{name}", UriKind.Relative));
}
