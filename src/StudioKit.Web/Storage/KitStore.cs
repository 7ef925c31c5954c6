using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace StudioKit.Web.Storage;

/// <summary>Keeps kits in the browser's own database.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class KitStore : IKitStore
{
    private const string Module = "kit-store";

    private readonly Lazy<Task> _loaded = PageScript.Of(Module);

    /// <inheritdoc/>
    public Task<IReadOnlyList<KeptKitLine>> ListAsync() => Ask(async () => Read(await List(), StorageJson.Default.IReadOnlyListKeptKitLine));

    /// <inheritdoc/>
    public Task<KeptKit?> LoadAsync(string id) => Ask(async () => await Load(id) is { } json ? Read(json, StorageJson.Default.KeptKit) : null);

    /// <inheritdoc/>
    public Task<string?> TextAsync(string id) => Ask(() => Text(id));

    /// <inheritdoc/>
    public Task<KeptKit> AddAsync(string name, string text, string beside = "") => Ask(async () => Read(await Add(name, text, beside), StorageJson.Default.KeptKit));

    /// <inheritdoc/>
    public Task<string> BesideAsync(string id) => Ask(() => Beside(id));

    /// <inheritdoc/>
    public Task KeepBesideAsync(string id, string beside) => Ask(() => Done(KeepBeside(id, beside)));

    /// <inheritdoc/>
    public Task<SaveOutcome> SaveAsync(string id, string text) => Ask(async () => await Save(id, text) switch
    {
        "saved" => SaveOutcome.Saved,
        "newer" => SaveOutcome.Newer,
        _ => SaveOutcome.Gone,
    });

    /// <inheritdoc/>
    public Task<string> RenameAsync(string id, string name) => Ask(() => Rename(id, name));

    /// <inheritdoc/>
    public Task ThrowAwayAsync(string id) => Ask(() => Done(ThrowAway(id)));

    /// <inheritdoc/>
    public Task TakeBackAsync(string id) => Ask(() => Done(TakeBack(id)));

    /// <inheritdoc/>
    public Task ClearOutAsync() => Ask(() => Done(ClearOut()));

    /// <inheritdoc/>
    public Task<string> LastAsync() => Ask(() => Task.FromResult(Last()));

    /// <inheritdoc/>
    void IKitStore.SetLast(string id) => SetLast(id);

    /// <inheritdoc/>
    public Task<StorageRoom> RoomAsync() => Ask(async () => Read(await Room(), StorageJson.Default.StorageRoom));

    /// <inheritdoc/>
    public Task<bool> AskToKeepAsync() => Ask(AskToKeep);

    private async Task<T> Ask<T>(Func<Task<T>> ask)
    {
        try
        {
            await _loaded.Value;
            return await ask();
        }
        catch (JSException fault)
        {
            throw new KeepingException(TroubleOf(fault.Message), fault);
        }
    }

    private static async Task<bool> Done(Task work)
    {
        await work;
        return true;
    }

    // The script's faults begin with one word.
    private static KeepingTrouble TroubleOf(string message) => message.Replace("Error: ", "", StringComparison.Ordinal).Split(':')[0] switch
    {
        "full" => KeepingTrouble.Full,
        "newer-page" => KeepingTrouble.NewerPage,
        "waiting" => KeepingTrouble.Waiting,
        _ => KeepingTrouble.Refused,
    };

    private static T Read<T>(string json, JsonTypeInfo<T> form) => JsonSerializer.Deserialize(json, form) ?? throw new JsonException("The store answered nothing.");

    [JSImport("list", Module)]
    private static partial Task<string> List();

    [JSImport("load", Module)]
    private static partial Task<string?> Load(string id);

    [JSImport("text", Module)]
    private static partial Task<string?> Text(string id);

    [JSImport("add", Module)]
    private static partial Task<string> Add(string name, string text, string beside);

    [JSImport("beside", Module)]
    private static partial Task<string> Beside(string id);

    [JSImport("keepBeside", Module)]
    private static partial Task KeepBeside(string id, string beside);

    [JSImport("save", Module)]
    private static partial Task<string> Save(string id, string text);

    [JSImport("rename", Module)]
    private static partial Task<string> Rename(string id, string name);

    [JSImport("throwAway", Module)]
    private static partial Task ThrowAway(string id);

    [JSImport("takeBack", Module)]
    private static partial Task TakeBack(string id);

    [JSImport("clearOut", Module)]
    private static partial Task ClearOut();

    [JSImport("last", Module)]
    private static partial string Last();

    [JSImport("setLast", Module)]
    private static partial void SetLast(string id);

    [JSImport("room", Module)]
    private static partial Task<string> Room();

    [JSImport("askToKeep", Module)]
    private static partial Task<bool> AskToKeep();
}
