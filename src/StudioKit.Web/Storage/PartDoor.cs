using StudioKit.Web.Editing;
using StudioKit.Web.Engine;
using StudioKit.Web.Results;

namespace StudioKit.Web.Storage;

/// <summary>Puts what comes in beside a kit that is on this device already. A part that is there is never replaced by another.</summary>
/// <param name="keeper">Keeps it.</param>
/// <param name="store">The kits on this device.</param>
/// <param name="engine">Reads the kit in hand.</param>
/// <param name="desk">The kit in hand.</param>
public sealed class PartDoor(KitKeeper keeper, IKitStore store, IEngine engine, Desk desk)
{
    /// <summary>Puts a part beside the kit in hand, which names it.</summary>
    /// <param name="fileName">Name of its file.</param>
    /// <param name="stem">The same without its ending.</param>
    /// <param name="text">Its text.</param>
    /// <returns>What became of it.</returns>
    /// <exception cref="EngineFaultException">The worker failed.</exception>
    public async Task<KeepingNotice> TakeAsync(string fileName, string stem, string text)
    {
        var names = desk.Kit is { } kit ? await engine.AskAsync(EngineQuestions.PartNames, new PartNamesRequest(kit.Text, kit.Beside.Parts)) : null;
        return (names?.Missing ?? []).Concat(names?.Named ?? []).FirstOrDefault(place => place.EndsWith($"/{stem}", StringComparison.Ordinal)) is { } found
            ? await TakeAsAsync(fileName, found, text)
            : new KeepingNotice(KeepingNoticeKind.PartUnnamed, fileName);
    }

    /// <summary>Puts a part beside the kit in hand.</summary>
    /// <param name="fileName">Name of its file.</param>
    /// <param name="place">Which part it is, as <c>KIND/NAME</c>.</param>
    /// <param name="text">Its text.</param>
    /// <returns>What became of it.</returns>
    public async Task<KeepingNotice> TakeAsAsync(string fileName, string place, string text)
    {
        if (desk.Kit is not { } kit)
        {
            return new KeepingNotice(KeepingNoticeKind.PartUnnamed, fileName);
        }

        var parts = new Dictionary<string, string>(StringComparer.Ordinal) { [place] = text };
        if (!kit.Beside.Takes(parts))
        {
            return new KeepingNotice(KeepingNoticeKind.PartOther, fileName, kit.FileName);
        }

        kit.Beside = kit.Beside.With(parts);
        await keeper.KeepBesideAsync();
        await desk.PlanAgainAsync();
        return new KeepingNotice(KeepingNoticeKind.PartTaken, fileName, kit.FileName);
    }

    /// <summary>Puts what came with a kit beside the same kit on this device.</summary>
    /// <param name="id">What the kit is kept under.</param>
    /// <param name="beside">What came with it.</param>
    /// <exception cref="KeepingException">It cannot be kept.</exception>
    public async Task AddAsync(string id, KitBeside beside)
    {
        var here = id == keeper.Id && desk.Kit is { } open ? open.Beside : KitBeside.Read(await store.BesideAsync(id));
        var both = here.With(beside.Parts) with { Pins = here.Pins.Count > 0 ? here.Pins : beside.Pins };
        if (both.Write() == here.Write())
        {
            return;
        }

        if (id == keeper.Id && desk.Kit is { } kit)
        {
            kit.Beside = both;
            await keeper.KeepBesideAsync();
            await desk.PlanAgainAsync();
        }
        else
        {
            await store.KeepBesideAsync(id, both.Write());
        }
    }
}
