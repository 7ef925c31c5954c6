using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace StudioKit.Web.Storage;

/// <summary>Hears of the page's copy from the script that looks after it.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class PageCopy : IPageCopy
{
    private const string Module = "page-copy";

    /// <inheritdoc/>
    public async Task ListenAsync(Action<PageCopyState> told)
    {
        await JSHost.ImportAsync(Module, "../js/page-copy.js");
        Listen(state => told(Enum.Parse<PageCopyState>(state, ignoreCase: true)));
    }

    /// <inheritdoc/>
    void IPageCopy.TakeNewer() => TakeNewer();

    [JSImport("listen", Module)]
    private static partial void Listen([JSMarshalAs<JSType.Function<JSType.String>>] Action<string> told);

    [JSImport("takeNewer", Module)]
    private static partial void TakeNewer();
}
