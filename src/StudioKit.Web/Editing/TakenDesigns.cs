using StudioKit.Web.Engine;
using StudioKit.Web.Results;
using StudioKit.Web.Storage;

namespace StudioKit.Web.Editing;

/// <summary>What is done with a design that was found: its kit is taken in hand, kept as a kit of its own, pinned, or held beside the kit that was searched.</summary>
/// <param name="engine">Who writes its kit.</param>
/// <param name="desk">The kit in hand.</param>
/// <param name="designs">What was found.</param>
/// <param name="store">The kits on this device.</param>
/// <param name="pins">Pinned states of the kit in hand.</param>
public sealed class TakenDesigns(IEngine engine, Desk desk, DesignDesk designs, IKitStore store, Pins pins)
{
    private string _takenText = "";
    private string _said = "";

    /// <summary>Whether a design was written into the kit and that is how it stands.</summary>
    public bool IsTaken => _takenText.Length > 0 && desk.Kit?.Text == _takenText;

    /// <summary>What came of it; empty where nothing was done, or it was undone.</summary>
    public string Said => _takenText.Length > 0 && !IsTaken ? "" : _said;

    /// <summary>How a design's plan differs from that of the kit that was searched; none before it was asked for.</summary>
    public CompareAnswer? Compared { get; private set; }

    /// <summary>Begins anew, as another design is looked at.</summary>
    public void Forget() => (_takenText, _said, Compared) = ("", "", null);

    /// <summary>Puts a design into the kit in hand, as a change that can be taken back.</summary>
    /// <param name="design">The design.</param>
    public Task TakeAsync(FoundDesign design) => WithKitAsync(design, async text =>
    {
        // What was typed since would be lost.
        if (designs.IsOutdated)
        {
            _said = "The kit was changed since the search: search again, or keep the design as a kit of its own.";
            return;
        }

        await desk.ChangeAsync(kit => kit.Change(text));
        (_takenText, _said) = (text, $"The kit is design {design.Number} now.");
    });

    /// <summary>Keeps a design as a kit of its own on this device; the kit in hand stays as it is.</summary>
    /// <param name="design">The design.</param>
    /// <param name="name">The name that it would have best.</param>
    /// <exception cref="KeepingException">It cannot be kept.</exception>
    public Task KeepAsync(FoundDesign design, string name) => WithKitAsync(design, async text =>
    {
        var beside = (designs.Searched?.Beside ?? KitBeside.Nothing) with { Pins = [] };
        var kept = await store.AddAsync(KitName.Of(name.Trim()), text, beside.Write());
        _said = $"Kept on this device as {kept.Name}; it is under Kits.";
    });

    /// <summary>Pins a design beside the kit in hand.</summary>
    /// <param name="design">The design.</param>
    public Task PinAsync(FoundDesign design) => WithKitAsync(design, async text =>
    {
        await pins.AddAsync($"design {design.Number}, {string.Join(", ", design.Figures)}", text);
        _said = "Pinned; under Gear and Animals it can be held beside the kit and other pins.";
    });

    /// <summary>Plans a design and holds it beside the kit that was searched.</summary>
    /// <param name="design">The design.</param>
    public Task CompareAsync(FoundDesign design) => WithKitAsync(design, async text =>
    {
        var (compared, fault) = await engine.TryAsync(EngineQuestions.Compare, new CompareRequest(designs.Searched!.Value.Text, text, designs.Searched.Value.FileName));
        (Compared, _said) = (compared ?? Compared, fault);
    });

    private async Task WithKitAsync(FoundDesign design, Func<string, Task> deed)
    {
        ArgumentNullException.ThrowIfNull(design);
        _takenText = "";
        var (kit, fault) = await engine.TryAsync(EngineQuestions.Design, new DesignRequest(design.Code));
        if (kit is not { Problem.Length: 0 })
        {
            _said = kit?.Problem ?? fault;
            return;
        }

        await deed(kit.Text);
    }
}
