using System.Text.Json;
using StudioKit.Web.Engine;
using StudioKit.Web.Outdoors;
using StudioKit.Web.Results;
using StudioKit.Web.Storage;

namespace StudioKit.Web.Editing;

/// <summary>The measured corrections that are kept on this device, one for a kit; plans are made with them, and the kits' own texts stay as they are.</summary>
/// <param name="engine">Where plans are made.</param>
/// <param name="device">Where they are kept.</param>
/// <param name="desk">The kit in hand.</param>
public sealed class Corrections(IEngine engine, IDevice device, Desk desk)
{
    private const string Note = "corrections";

    // Where they lie in an archive of everything.
    private const string Folder = "corrections/";

    private KeptCorrections _kept = new([], []);

    /// <summary>What cannot be used of what was kept.</summary>
    public IReadOnlyList<string> Faults => _kept.Faults;

    /// <summary>What is kept for a kit; none where nothing is.</summary>
    /// <param name="kitName">The kit's name.</param>
    public KeptCorrection? Of(string kitName) => _kept.Kits.FirstOrDefault(kept => kept.KitName == kitName);

    /// <summary>All that are kept, by the names of their files in an archive of everything.</summary>
    public IReadOnlyDictionary<string, string> Together() => _kept.Kits
        .Select((kept, place) => (Name: FormattableString.Invariant($"{Folder}{place + 1}.correction.yaml"), kept.Text))
        .ToDictionary(file => file.Name, file => file.Text, StringComparer.Ordinal);

    /// <summary>Takes up what was kept on an earlier visit; a first plan without any does not wait for it.</summary>
    public async Task RestoreAsync()
    {
        if (await device.KeptAsync(Note) is { Length: > 0 } note)
        {
            await CorrectAsync(Texts(note));
        }
    }

    /// <summary>Keeps a correction in place of the one before, and plans with it.</summary>
    /// <param name="text">Text of its file.</param>
    public async Task KeepAsync(string text)
    {
        if (await CorrectAsync([.. _kept.Kits.Select(kept => kept.Text), text]))
        {
            await RememberAsync();
        }
    }

    /// <summary>
    /// Takes a correction file in: one by itself for the kit in hand, which it must have been measured for; one from an archive of everything for whichever kit it names.
    /// One that is kept already is not replaced.
    /// </summary>
    /// <param name="fileName">Its name.</param>
    /// <param name="path">Where it lies in its archive; its name where it comes by itself.</param>
    /// <param name="text">Its text.</param>
    /// <returns>What became of it.</returns>
    /// <exception cref="EngineFaultException">The worker failed.</exception>
    public async Task<KeepingNotice> TakeInAsync(string fileName, string path, string text)
    {
        var read = await engine.AskAsync(EngineQuestions.ReadCorrection, new CorrectionRequest(fileName, text));
        if (read is not { Problem.Length: 0 })
        {
            return new KeepingNotice(KeepingNoticeKind.NotOpened, fileName, read?.Problem ?? "");
        }

        if (read.KitName != desk.Plan?.KitName && !path.StartsWith(Folder, StringComparison.Ordinal))
        {
            return new KeepingNotice(KeepingNoticeKind.CorrectionOfOther, fileName, read.KitName);
        }

        if (Of(read.KitName) is { } there && there.Text != text)
        {
            return new KeepingNotice(KeepingNoticeKind.CorrectionThere, fileName, read.KitName);
        }

        await KeepAsync(text);
        return new KeepingNotice(KeepingNoticeKind.Corrected, fileName, read.KitName);
    }

    /// <summary>Removes the correction of a kit, and plans without it.</summary>
    /// <param name="kitName">The kit's name.</param>
    public async Task RemoveAsync(string kitName)
    {
        if (await CorrectAsync([.. _kept.Kits.Where(kept => kept.KitName != kitName).Select(kept => kept.Text)]))
        {
            await RememberAsync();
        }
    }

    // A worker that fails at it keeps what it had; what was asked for is not forgotten on the device.
    private async Task<bool> CorrectAsync(IReadOnlyList<string> texts)
    {
        var (kept, fault) = await engine.TryAsync(EngineQuestions.Correct, new CorrectionTexts(texts));
        _kept = kept ?? _kept with { Faults = [fault] };
        return kept is not null;
    }

    private async Task RememberAsync()
    {
        var texts = new CorrectionTexts([.. _kept.Kits.Select(kept => kept.Text)]);
        await device.KeepAsync(Note, texts.Texts.Count == 0 ? "" : JsonSerializer.Serialize(texts, ResultsJson.Default.CorrectionTexts));
        await desk.PlanAgainAsync();
    }

    // Somebody else's note under the same name is nothing to stumble over.
    private static IReadOnlyList<string> Texts(string note)
    {
        try
        {
            return JsonSerializer.Deserialize(note, ResultsJson.Default.CorrectionTexts)?.Texts ?? [];
        }
        catch (JsonException)
        {
            return [];
        }
    }
}
