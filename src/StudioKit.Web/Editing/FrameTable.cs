using StudioKit.Web.Engine;
using StudioKit.Web.Results;
using StudioKit.Web.Storage;

namespace StudioKit.Web.Editing;

/// <summary>The test frames that the visitor picked, and what the plan makes of them. They stay on the table while the visitor looks at something else.</summary>
/// <param name="engine">Where answers come from.</param>
/// <param name="desk">The kit in hand.</param>
/// <param name="picker">Where pictures come from.</param>
/// <param name="clock">For the day of frames that do not name their own.</param>
public sealed class FrameTable(IEngine engine, Desk desk, IPicturePicker picker, TimeProvider clock) : IDisposable
{
    private readonly List<TakenFrame> _frames = [];

    // One thing after the other: what was asked of one state of the table says nothing of the next.
    private readonly SemaphoreSlim _turn = new(1);
    private int _waiting;

    /// <summary>Something on the table changed.</summary>
    public event EventHandler? Changed;

    /// <summary>The frames, in the order they were picked.</summary>
    public IReadOnlyList<TakenFrame> Frames => _frames;

    /// <summary>Set-up that they were taken with.</summary>
    public string SetUp { get; set; } = "";

    /// <summary>Framing that they were taken with; empty where each file is to tell.</summary>
    public string Framing { get; set; } = "";

    /// <summary>Camera angle under the horizontal, in degrees; it counts for a ladder.</summary>
    public double PitchDegrees { get; set; }

    /// <summary>Whether they show the bare panel, no subject.</summary>
    public bool AreBare { get; set; }

    /// <summary>What is being done; empty while nothing is.</summary>
    public string Step { get; private set; } = "";

    /// <summary>What the frames measure as a power ladder; none before it was asked.</summary>
    public LadderAnswer? Ladder { get; private set; }

    /// <summary>Whether something is being done, or waits to be.</summary>
    public bool IsBusy => _waiting > 0;

    /// <summary>Whether the frames can be asked as a ladder: three or more, each with its power.</summary>
    public bool IsLadder => _frames.Count(frame => frame.Read is not null && frame.Power.Length > 0) >= 3;

    /// <summary>Puts a picture on the table, reads it and tells of it.</summary>
    /// <param name="key">Its key in the worker.</param>
    /// <param name="name">Its file's name.</param>
    public Task AddAsync(string key, string name)
    {
        var frame = new TakenFrame(key, name);
        _frames.Add(frame);
        return InTurnAsync(() => ReadAsync(frame));
    }

    /// <summary>Takes a picture off the table.</summary>
    /// <param name="frame">The picture.</param>
    public Task RemoveAsync(TakenFrame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        _frames.Remove(frame);
        Ladder = null;
        Say("");
        return picker.ForgetAsync(frame.Key);
    }

    /// <summary>Reads all pictures again, as when they turn out to show the bare panel.</summary>
    public Task ReadAllAsync() => InTurnAsync(ReadEachAsync);

    /// <summary>Tells of all frames again, as when the framing was another one.</summary>
    public Task TellAllAsync() => InTurnAsync(async () =>
    {
        foreach (var frame in _frames.Where(frame => frame.Read is not null).ToList())
        {
            await AdviseAsync(frame);
        }
    });

    /// <summary>Tells of one frame again, as when its power was another one.</summary>
    /// <param name="frame">The frame.</param>
    public Task TellAsync(TakenFrame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return InTurnAsync(() => AdviseAsync(frame));
    }

    /// <summary>Measures the panel from the frames as a power ladder.</summary>
    public Task MeasureAsync() => InTurnAsync(MeasureEachAsync);

    /// <inheritdoc/>
    public void Dispose() => _turn.Dispose();

    private Task AdviseAsync(TakenFrame frame)
    {
        Ladder = null;
        return AskAsync($"Working out what to turn from the plan after {frame.Name}.", async kit =>
            frame.Told = await engine.AskAsync(EngineQuestions.Frame, new FrameRequest(kit.Text, kit.FileName, frame.Key, SetUp, Framing, frame.Power.Trim())) ?? frame.Told, frame);
    }

    private async Task MeasureEachAsync()
    {
        if (!AreBare)
        {
            AreBare = true;
            await ReadEachAsync();
        }

        var rungs = _frames.Where(frame => frame.Read is not null && frame.Power.Length > 0).Select(frame => new LadderRung(frame.Key, frame.Power.Trim())).ToList();
        var day = clock.GetLocalNow().ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        await AskAsync("Measuring the panel from these frames.", async kit =>
            Ladder = await engine.AskAsync(EngineQuestions.Ladder, new LadderRequest(kit.Text, kit.FileName, SetUp, Framing, PitchDegrees, rungs, day)) ?? Ladder);
    }

    private async Task ReadEachAsync()
    {
        foreach (var frame in _frames.ToList())
        {
            await ReadAsync(frame);
        }
    }

    private async Task InTurnAsync(Func<Task> work)
    {
        _waiting++;
        await _turn.WaitAsync();
        try
        {
            await work();
        }
        finally
        {
            _waiting--;
            _turn.Release();
            Say("");
        }
    }

    private async Task ReadAsync(TakenFrame frame)
    {
        Ladder = null;
        (frame.Read, frame.Told, frame.Faults) = (null, null, []);
        await AskAsync($"Reading {frame.Name}.", async _ =>
        {
            var read = await engine.AskAsync(EngineQuestions.Read, new PictureRequest(frame.Key, frame.Name, AreBare, AreBare ? "" : desk.Plan?.KitName ?? ""));
            frame.Faults = read?.Faults ?? [];
            frame.Read = read is { Faults.Count: 0 } ? read : null;
        }, frame);
        if (frame.Read is not null)
        {
            frame.Power = frame.Power.Length > 0 ? frame.Power : frame.Read.Power;
            await AdviseAsync(frame);
        }
    }

    private async Task AskAsync(string step, Func<KitDocument, Task> ask, TakenFrame? about = null)
    {
        if (desk.Kit is not { } kit)
        {
            return;
        }

        Say(step);
        try
        {
            await ask(kit);
        }
        catch (EngineFaultException fault)
        {
            if (about is not null)
            {
                about.Faults = [fault.Message];
            }
            else
            {
                Ladder = new LadderAnswer("", [], "", [fault.Message]);
            }
        }

        Say("");
    }

    private void Say(string step)
    {
        Step = step;
        Changed?.Invoke(this, EventArgs.Empty);
    }
}
