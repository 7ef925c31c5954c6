using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace StudioKit.Web.Storage;

/// <summary>The look as the page's own script put it on.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class Looks : ILooks
{
    private const string Module = "looks";

    /// <inheritdoc/>
    public async Task<string> GetAsync()
    {
        await JSHost.ImportAsync(Module, "../js/looks.js");
        return Current();
    }

    /// <inheritdoc/>
    void ILooks.Set(string look) => Set(look);

    [JSImport("look", Module)]
    private static partial string Current();

    [JSImport("setLook", Module)]
    private static partial void Set(string look);
}
