using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace StudioKit.Web.Outdoors;

/// <summary>The browser's own device.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class Device : IDevice
{
    private const string Module = "device";

    private readonly Lazy<Task> _loaded = PageScript.Of(Module);

    /// <inheritdoc/>
    public async Task KeepAsync(string name, string note)
    {
        await _loaded.Value;
        Keep(name, note);
    }

    /// <inheritdoc/>
    public async Task<string> KeptAsync(string name)
    {
        await _loaded.Value;
        return Kept(name);
    }

    /// <inheritdoc/>
    public async Task<bool> StayAwakeAsync(bool awake)
    {
        await _loaded.Value;
        return await StayAwake(awake);
    }

    /// <inheritdoc/>
    public async Task BuzzAsync()
    {
        await _loaded.Value;
        Buzz();
    }

    [JSImport("keep", Module)]
    private static partial void Keep(string name, string note);

    [JSImport("kept", Module)]
    private static partial string Kept(string name);

    [JSImport("stayAwake", Module)]
    private static partial Task<bool> StayAwake(bool awake);

    [JSImport("buzz", Module)]
    private static partial void Buzz();
}
