using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace StudioKit.Web.Storage;

/// <summary>The browser's own pickers.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class PicturePicker : IPicturePicker
{
    private const string Module = "picture-picker";

    private readonly Lazy<Task> _loaded = PageScript.Of(Module);

    /// <inheritdoc/>
    public async Task WatchAsync(string place, Action<string, string> picked)
    {
        await _loaded.Value;
        Watch(place, picked);
    }

    /// <inheritdoc/>
    public async Task ForgetAsync(string key)
    {
        await _loaded.Value;
        await Forget(key);
    }

    /// <inheritdoc/>
    public async Task PaintAsync(string canvas, string key, int width, int height)
    {
        await _loaded.Value;
        await Paint(canvas, key, width, height);
    }

    /// <inheritdoc/>
    public async Task SaveTextAsync(string name, string text)
    {
        await _loaded.Value;
        SaveText(name, text);
    }

    [JSImport("watch", Module)]
    private static partial void Watch(string place, [JSMarshalAs<JSType.Function<JSType.String, JSType.String>>] Action<string, string> picked);

    [JSImport("forget", Module)]
    private static partial Task Forget(string key);

    [JSImport("paint", Module)]
    private static partial Task Paint(string canvas, string key, int width, int height);

    [JSImport("saveText", Module)]
    private static partial void SaveText(string name, string text);
}
