using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace StudioKit.Web.Storage;

/// <summary>Tells tabs apart by the browser's locks, and hears of others by its channel.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class KitTabs : IKitTabs
{
    private const string Module = "kit-tabs";

    /// <inheritdoc/>
    public async Task ListenAsync(Action<TabNews> told)
    {
        await JSHost.ImportAsync(Module, "../js/kit-tabs.js");
        Listen(news => told(Read(news)));
    }

    /// <inheritdoc/>
    public Task<bool> HoldAsync(string id) => Hold(id);

    /// <inheritdoc/>
    public Task TakeOverAsync(string id) => TakeOver(id);

    /// <inheritdoc/>
    void IKitTabs.HandOver(string id) => HandOver(id);

    /// <inheritdoc/>
    string IKitTabs.MarkedOpening() => MarkedOpening();

    /// <inheritdoc/>
    void IKitTabs.MarkOpening(string id) => MarkOpening(id);

    /// <inheritdoc/>
    void IKitTabs.Guard(bool unsaved) => Guard(unsaved);

    private static TabNews Read(string news)
    {
        var gap = news.IndexOf(' ', StringComparison.Ordinal);
        var kind = news[..gap] switch
        {
            "asked" => TabNewsKind.Asked,
            "lost" => TabNewsKind.Lost,
            "gained" => TabNewsKind.Gained,
            _ => TabNewsKind.Changed,
        };
        return new TabNews(kind, news[(gap + 1)..]);
    }

    [JSImport("listen", Module)]
    private static partial void Listen([JSMarshalAs<JSType.Function<JSType.String>>] Action<string> told);

    [JSImport("hold", Module)]
    private static partial Task<bool> Hold(string id);

    [JSImport("takeOver", Module)]
    private static partial Task TakeOver(string id);

    [JSImport("handOver", Module)]
    private static partial void HandOver(string id);

    [JSImport("markedOpening", Module)]
    private static partial string MarkedOpening();

    [JSImport("markOpening", Module)]
    private static partial void MarkOpening(string id);

    [JSImport("guard", Module)]
    private static partial void Guard(bool unsaved);
}
