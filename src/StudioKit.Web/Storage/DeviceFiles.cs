using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json;

namespace StudioKit.Web.Storage;

/// <summary>Files of this device as the browser lets a page have them.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class DeviceFiles : IDeviceFiles
{
    private const string Module = "kit-files";

    private bool _isLoaded;

    /// <inheritdoc/>
    bool IDeviceFiles.CanChoosePlace => _isLoaded && CanChoosePlace();

    /// <inheritdoc/>
    public async Task ListenAsync(Action<IReadOnlyList<OpenedFile>> dropped)
    {
        await JSHost.ImportAsync(Module, "../js/kit-files.js");
        _isLoaded = true;
        Listen(files => dropped(Read(files)));
    }

    /// <inheritdoc/>
    public async Task<IReadOnlyList<OpenedFile>> PickAsync() => Read(await Pick());

    /// <inheritdoc/>
    void IDeviceFiles.Download(string name, string text) => Download(name, text);

    /// <inheritdoc/>
    void IDeviceFiles.DownloadTogether(string name, string text, string beside) => DownloadTogether(name, text, beside);

    /// <inheritdoc/>
    public Task<bool> SaveInPlaceAsync(string name, string text, string beside) => Ask(() => SaveInPlace(name, text, beside));

    /// <inheritdoc/>
    public Task<int> DownloadAllAsync(string name, IReadOnlyDictionary<string, string> more) =>
        Ask(() => DownloadAll(name, JsonSerializer.Serialize(more, StorageJson.Default.IReadOnlyDictionaryStringString)));

    private static async Task<T> Ask<T>(Func<Task<T>> ask)
    {
        try
        {
            return await ask();
        }
        catch (JSException fault)
        {
            throw new KeepingException(fault.Message, fault);
        }
    }

    private static IReadOnlyList<OpenedFile> Read(string json) => JsonSerializer.Deserialize(json, StorageJson.Default.IReadOnlyListOpenedFile) ?? [];

    [JSImport("listen", Module)]
    private static partial void Listen([JSMarshalAs<JSType.Function<JSType.String>>] Action<string> dropped);

    [JSImport("pick", Module)]
    private static partial Task<string> Pick();

    [JSImport("download", Module)]
    private static partial void Download(string name, string text);

    [JSImport("downloadTogether", Module)]
    private static partial void DownloadTogether(string name, string text, string beside);

    [JSImport("canChoosePlace", Module)]
    private static partial bool CanChoosePlace();

    [JSImport("saveInPlace", Module)]
    private static partial Task<bool> SaveInPlace(string name, string text, string beside);

    [JSImport("downloadAll", Module)]
    private static partial Task<int> DownloadAll(string name, string more);
}
