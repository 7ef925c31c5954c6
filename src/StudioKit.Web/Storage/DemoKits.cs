using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace StudioKit.Web.Storage;

/// <summary>Kits that come with the page, fetched by the browser itself: the framework's own client would be loaded for three small files.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class DemoKits : IDemoKits
{
    private const string Module = "demo-kits";

    /// <inheritdoc/>
    public IReadOnlyList<string> Names { get; } = ["fen-edge.yaml", "heath-ultralight.yaml", "pond-edge.yaml", "tall-stand.yaml"];

    /// <inheritdoc/>
    public async Task<string> TextAsync(string name)
    {
        try
        {
            await JSHost.ImportAsync(Module, "../js/demo-kits.js");
            return await Text(name);
        }
        catch (JSException fault)
        {
            throw new IOException(fault.Message, fault);
        }
    }

    [JSImport("text", Module)]
    private static partial Task<string> Text(string name);
}
