using StudioKit.Web.Engine;
using StudioKit.Web.Results;

namespace StudioKit.Web.Editing;

/// <summary>What lies on the desk: the kit in hand and its newest plan. Whoever shows it listens to <see cref="Changed"/>.</summary>
/// <param name="engine">Where plans come from.</param>
public sealed class Desk(IEngine engine)
{
    private IReadOnlyDictionary<string, string>? _handed = KitBeside.Nothing.Parts;

    /// <summary>Something on the desk changed.</summary>
    public event EventHandler? Changed;

    /// <summary>The kit in hand; none before one is opened.</summary>
    public KitDocument? Kit { get; private set; }

    /// <summary>The newest plan; it may be older than the text while <see cref="Step"/> says that one is being made.</summary>
    public PlanAnswer? Plan { get; private set; }

    /// <summary>What is being worked out; empty while nothing is.</summary>
    public string Step { get; private set; } = "";

    /// <summary>What went wrong in the worker; empty where nothing did.</summary>
    public string EngineFault { get; private set; } = "";

    /// <summary>Puts a kit on the desk and plans it.</summary>
    /// <param name="kit">The kit.</param>
    public Task OpenAsync(KitDocument kit)
    {
        Kit = kit;
        return PlanAsync();
    }

    /// <summary>Changes the kit's text and plans again.</summary>
    /// <param name="change">What is done to the kit.</param>
    public Task ChangeAsync(Action<KitDocument> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        if (Kit is null)
        {
            return Task.CompletedTask;
        }

        change(Kit);
        return PlanAsync();
    }

    /// <summary>Plans the same text again, as when a correction of it was kept or removed.</summary>
    public Task PlanAgainAsync() => Kit is null ? Task.CompletedTask : PlanAsync();

    private async Task PlanAsync()
    {
        var text = Kit!.Text;
        try
        {
            await HandPartsAsync(Kit.Beside.Parts);
            Say("kit");
            var answer = await engine.AskAsync(EngineQuestions.Plan, new PlanRequest(text, Kit.FileName), new Steps(this));
            if (answer is not null && Kit.Text == text)
            {
                (Plan, EngineFault) = (answer, "");
                Say("");
            }
        }
        catch (EngineFaultException fault)
        {
            EngineFault = fault.Message;
            Say("");
        }
    }

    // The worker reads every text with the parts of the kit in hand; most kits have none of their own.
    private async Task HandPartsAsync(IReadOnlyDictionary<string, string> parts)
    {
        if (ReferenceEquals(parts, _handed) || (parts.Count == 0 && _handed is { Count: 0 }))
        {
            return;
        }

        _handed = parts;
        var (_, fault) = await engine.TryAsync(EngineQuestions.Beside, new PartTexts(parts));
        if (fault.Length > 0)
        {
            _handed = null;
            throw new EngineFaultException(fault);
        }
    }

    private void Say(string step)
    {
        Step = step;
        Changed?.Invoke(this, EventArgs.Empty);
    }

    private sealed class Steps(Desk desk) : IProgress<string>
    {
        public void Report(string value) => desk.Say(value);
    }
}
