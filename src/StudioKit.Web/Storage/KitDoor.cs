using StudioKit.Web.Editing;
using StudioKit.Web.Engine;
using StudioKit.Web.Results;

namespace StudioKit.Web.Storage;

/// <summary>The door by which kits come in: from files, from those that come with the page, or to begin anew. Nothing on the device is replaced by what comes in.</summary>
/// <param name="keeper">Keeps what comes in.</param>
/// <param name="store">The kits on this device.</param>
/// <param name="demos">Kits that come with the page.</param>
/// <param name="engine">Says what can be a kit.</param>
/// <param name="parts">Puts parts beside kits.</param>
/// <param name="corrections">Keeps corrections with kits.</param>
public sealed class KitDoor(KitKeeper keeper, IKitStore store, IDemoKits demos, IEngine engine, PartDoor parts, Corrections corrections)
{
    private const string StarterName = "my-kit.yaml";

    /// <summary>Names of the kits that come with the page.</summary>
    public IReadOnlyList<string> DemoNames => demos.Names;

    /// <summary>The kit that a newcomer is shown.</summary>
    public async Task<(string Name, string Text)> FirstAsync() => (demos.Names[0], await demos.TextAsync(demos.Names[0]));

    /// <summary>Opens a kit that comes with the page.</summary>
    /// <param name="name">Its file name.</param>
    public Task<KeepingNotice> OpenDemoAsync(string name) => TryAsync(name, async () => await TakeInAsync(name, await demos.TextAsync(name), KitBeside.Nothing, isOpened: true));

    /// <summary>Opens the commented kit to begin with.</summary>
    public Task<KeepingNotice> OpenStarterAsync() => TryAsync(
        StarterName, async () => await TakeInAsync(StarterName, (await engine.AskAsync(EngineQuestions.Starter, new StarterRequest()))!.Text!, KitBeside.Nothing, isOpened: true));

    /// <summary>Takes files in, each kit with its parts, and opens the last kit; parts and corrections that come alone go to the kit in hand.</summary>
    /// <param name="files">The files.</param>
    /// <returns>What became of each.</returns>
    public async Task<IReadOnlyList<KeepingNotice>> OpenAsync(IReadOnlyList<OpenedFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);

        var (read, notices) = (new List<ReadFile>(), new List<KeepingNotice>());
        foreach (var file in files)
        {
            var (found, notice) = await ReadAsync(file);
            read.AddRange(found is null ? [] : [found]);
            notices.AddRange(notice is null ? [] : [notice]);
        }

        var together = new FilesTogether(engine, read);
        var kits = new List<(ReadFile Kit, KitBeside Beside)>();
        if (await TryAsync("", async () =>
        {
            kits.AddRange(await together.KitsAsync());
            return new KeepingNotice(KeepingNoticeKind.Opened, "");
        }) is { Kind: KeepingNoticeKind.NotOpened } stumbled)
        {
            return [.. notices, stumbled with { Name = "What was opened" }];
        }

        notices.AddRange(kits.Where(kit => IsNone(kit.Kit)).Select(kit => new KeepingNotice(
            KeepingNoticeKind.NotOpened, kit.Kit.File.Name, "no line of it begins with a key of a kit, such as 'camera:', and its name does not end in .yaml.")));
        kits.RemoveAll(kit => IsNone(kit.Kit));
        foreach (var (kit, beside) in kits)
        {
            notices.Add(await TryAsync(kit.File.Name, () => TakeInAsync(KitName.Of(kit.File.Name), kit.Text, beside, isOpened: kit == kits[^1].Kit)));
        }

        foreach (var part in together.LeftParts.ToList())
        {
            notices.Add(await TryAsync(part.File.Name, () => part.Place is { } place ? parts.TakeAsAsync(part.File.Name, place, part.Text) : parts.TakeAsync(part.File.Name, part.Stem, part.Text)));
        }

        foreach (var correction in together.Corrections)
        {
            notices.Add(await TryAsync(correction.File.Name, () => corrections.TakeInAsync(correction.File.Name, correction.File.Path, correction.Text)));
        }

        return notices;
    }

    /// <summary>Takes a file for a part that the kit in hand names.</summary>
    /// <param name="place">Which part, as <c>KIND/NAME</c>.</param>
    /// <param name="file">The file, whatever it is called.</param>
    /// <returns>What became of it.</returns>
    public async Task<KeepingNotice> OpenPartAsync(string place, OpenedFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var (read, notice) = await ReadAsync(file);
        return notice ?? (read!.Kind is OpenedKind.Part or OpenedKind.Unsure
            ? await TryAsync(file.Name, () => parts.TakeAsAsync(file.Name, place, read.Text))
            : new KeepingNotice(KeepingNoticeKind.NotOpened, file.Name, "it is a kit or a correction, and no part."));
    }

    // A text with no key of a kit may be a kit that is only begun, if its name says so.
    private static bool IsNone(ReadFile file) => file.Kind == OpenedKind.Unsure && !KitName.IsOfKit(file.File.Name);

    private async Task<(ReadFile? Read, KeepingNotice? Notice)> ReadAsync(OpenedFile file)
    {
        if (file.Trouble.Length > 0)
        {
            return (null, new KeepingNotice(KeepingNoticeKind.NotOpened, file.Name, file.Trouble));
        }

        var (answer, fault) = await engine.TryAsync(EngineQuestions.Open, new OpenRequest(file.Base64, file.Name));
        return answer?.Text is { } text
            ? (new ReadFile(file, text, answer.Kind), null)
            : (null, new KeepingNotice(KeepingNoticeKind.NotOpened, file.Name, answer?.Problem ?? fault));
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

    private async Task<KeepingNotice> TakeInAsync(string name, string text, KitBeside beside, bool isOpened)
    {
        if (await KnownAsync(name, text, beside) is { } known)
        {
            await parts.AddAsync(known, beside);
            await OpenIf(isOpened, known);
            return new KeepingNotice(KeepingNoticeKind.KnownAlready, name, Id: known);
        }

        var given = isOpened ? await keeper.AddAsync(name, text, beside) : await AddAsync(name, text, beside);
        return given == name ? new KeepingNotice(KeepingNoticeKind.Opened, name) : new KeepingNotice(KeepingNoticeKind.NameTaken, name, given);
    }

    private async Task<string> AddAsync(string name, string text, KitBeside beside)
    {
        try
        {
            return (await store.AddAsync(name, text, beside.Write())).Name;
        }
        catch (KeepingException)
        {
            // Shown, so that it is in sight and can be saved as a file.
            return await keeper.AddAsync(name, text, beside);
        }
    }

    private Task OpenIf(bool isOpened, string id) => isOpened && id != keeper.Id ? keeper.OpenAsync(id) : Task.CompletedTask;

    // A kit of the same name, with or without a number behind it, of the same text, and without another part of the same name beside it.
    private async Task<string?> KnownAsync(string name, string text, KitBeside beside)
    {
        try
        {
            foreach (var line in (await store.ListAsync()).Where(line => !line.IsThrownAway && IsNamed(line.Name, name)))
            {
                if (await store.TextAsync(line.Id) == text && KitBeside.Read(await store.BesideAsync(line.Id)).Takes(beside.Parts))
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
