using StudioKit.Web.Engine;
using StudioKit.Web.Results;

namespace StudioKit.Web.Storage;

/// <summary>The door by which kits come in: from files, from those that come with the page, or to begin anew. Nothing on the device is replaced by what comes in.</summary>
/// <param name="keeper">Keeps what comes in.</param>
/// <param name="store">The kits on this device.</param>
/// <param name="demos">Kits that come with the page.</param>
/// <param name="engine">Says what can be a kit.</param>
public sealed class KitDoor(KitKeeper keeper, IKitStore store, IDemoKits demos, IEngine engine)
{
    private const string StarterName = "my-kit.yaml";

    /// <summary>Names of the kits that come with the page.</summary>
    public IReadOnlyList<string> DemoNames => demos.Names;

    /// <summary>The kit that a newcomer is shown.</summary>
    public async Task<(string Name, string Text)> FirstAsync() => (demos.Names[0], await demos.TextAsync(demos.Names[0]));

    /// <summary>Opens a kit that comes with the page.</summary>
    /// <param name="name">Its file name.</param>
    public Task<KeepingNotice> OpenDemoAsync(string name) => TryAsync(name, async () => await TakeInAsync(name, await demos.TextAsync(name), isOpened: true));

    /// <summary>Opens the commented kit to begin with.</summary>
    public Task<KeepingNotice> OpenStarterAsync() => TryAsync(
        StarterName, async () => await TakeInAsync(StarterName, (await engine.AskAsync(EngineQuestions.Starter, new StarterRequest()))!.Text!, isOpened: true));

    /// <summary>Takes files in, and opens the last one.</summary>
    /// <param name="files">The files.</param>
    /// <returns>What became of each.</returns>
    public async Task<IReadOnlyList<KeepingNotice>> OpenAsync(IReadOnlyList<OpenedFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);

        var notices = new List<KeepingNotice>();
        foreach (var file in files)
        {
            notices.Add(await OpenAsync(file, isOpened: file == files[^1]));
        }

        return notices;
    }

    private async Task<KeepingNotice> OpenAsync(OpenedFile file, bool isOpened)
    {
        if (file.Trouble.Length > 0)
        {
            return new KeepingNotice(KeepingNoticeKind.NotOpened, file.Name, file.Trouble);
        }

        return await TryAsync(file.Name, async () =>
        {
            var answer = await engine.AskAsync(EngineQuestions.Open, new OpenRequest(file.Base64, file.Name));
            return answer?.Text is { } text
                ? await TakeInAsync(KitName.Of(file.Name), text, isOpened)
                : new KeepingNotice(KeepingNoticeKind.NotOpened, file.Name, answer?.Problem ?? "");
        });
    }

    private static async Task<KeepingNotice> TryAsync(string name, Func<Task<KeepingNotice>> open)
    {
        try
        {
            return await open();
        }
        catch (Exception fault) when (fault is EngineFaultException or IOException)
        {
            return new KeepingNotice(KeepingNoticeKind.NotOpened, name, fault.Message);
        }
    }

    private async Task<KeepingNotice> TakeInAsync(string name, string text, bool isOpened)
    {
        if (await KnownAsync(name, text) is { } known)
        {
            await OpenIf(isOpened, known);
            return new KeepingNotice(KeepingNoticeKind.KnownAlready, name, Id: known);
        }

        var given = isOpened ? await keeper.AddAsync(name, text) : await AddAsync(name, text);
        return given == name ? new KeepingNotice(KeepingNoticeKind.Opened, name) : new KeepingNotice(KeepingNoticeKind.NameTaken, name, given);
    }

    private async Task<string> AddAsync(string name, string text)
    {
        try
        {
            return (await store.AddAsync(name, text)).Name;
        }
        catch (KeepingException)
        {
            // Shown, so that it is in sight and can be saved as a file.
            return await keeper.AddAsync(name, text);
        }
    }

    private Task OpenIf(bool isOpened, string id) => isOpened && id != keeper.Id ? keeper.OpenAsync(id) : Task.CompletedTask;

    // A kit of the same name, with or without a number behind it, and of the same text.
    private async Task<string?> KnownAsync(string name, string text)
    {
        try
        {
            foreach (var line in (await store.ListAsync()).Where(line => !line.IsThrownAway && IsNamed(line.Name, name)))
            {
                if (await store.TextAsync(line.Id) == text)
                {
                    return line.Id;
                }
            }
        }
        catch (KeepingException)
        {
            // Where nothing can be kept, nothing is known.
        }

        return null;
    }

    private static bool IsNamed(string kept, string name) =>
        Path.GetExtension(kept).Equals(Path.GetExtension(name), StringComparison.OrdinalIgnoreCase)
        && Path.GetFileNameWithoutExtension(kept).StartsWith(Path.GetFileNameWithoutExtension(name), StringComparison.OrdinalIgnoreCase);
}
