using StudioKit.Web.Engine;
using StudioKit.Web.Results;

namespace StudioKit.Web.Editing;

/// <summary>Designs that the kit on the desk leaves open: what to compare them by, the search that runs, and what it found. They stay while the visitor looks at something else.</summary>
/// <param name="engine">Who looks for them.</param>
/// <param name="desk">The kit in hand.</param>
public sealed class DesignDesk(IEngine engine, Desk desk)
{
    private const int FewDesigns = 300;

    private KitDocument? _kit;
    private (string Text, string Hash) _openOf;
    private (string Text, KitBeside Beside, string FileName)? _searched;
    private bool _isStopping;

    /// <summary>Something changed.</summary>
    public event EventHandler? Changed;

    /// <summary>What the kit leaves open; none before it was asked for.</summary>
    public OpenDesigns? Open { get; private set; }

    /// <summary>What to compare by, by keys.</summary>
    public ISet<string> Measures { get; private set; } = new HashSet<string>(StringComparer.Ordinal);

    /// <summary>Limits as they were typed, by the measure's key.</summary>
    public IDictionary<string, string> Limits { get; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>Designs to try at most.</summary>
    public int Most { get; set; } = FewDesigns;

    /// <summary>How far the search has come, or why there was none; none before the first.</summary>
    public SearchAnswer? Progress { get; private set; }

    /// <summary>Whether a search runs.</summary>
    public bool IsSearching { get; private set; }

    /// <summary>What the last search found; none before its end.</summary>
    public FoundDesigns? Found { get; private set; }

    /// <summary>The design that is looked at; none where none is.</summary>
    public FoundDesign? Chosen { get; private set; }

    /// <summary>What went wrong in the worker; empty where nothing did.</summary>
    public string Fault { get; private set; } = "";

    /// <summary>The kit that was searched, as it was then; none before the first search.</summary>
    public (string Text, KitBeside Beside, string FileName)? Searched => _searched;

    /// <summary>Whether the search is about the kit as it was before its last change, or about another.</summary>
    public bool IsOutdated => _searched is { } of && (of.Text != desk.Kit?.Text
        || (Found is { } found && desk is { Step.Length: 0, Plan: { Hash.Length: > 0 } plan } && plan.Hash != found.Hash));

    /// <summary>Asks what the kit leaves open, where it changed since it was asked last.</summary>
    public async Task LookAsync()
    {
        if (desk.Kit is not { } kit || _openOf == (kit.Text, desk.Plan?.Hash ?? ""))
        {
            return;
        }

        _openOf = (kit.Text, desk.Plan?.Hash ?? "");
        if (!ReferenceEquals(kit, _kit))
        {
            _kit = kit;
            Measures.Clear();
            Limits.Clear();
        }

        var (asked, request) = (_openOf, new DesignsRequest(kit.Text, kit.FileName, 0));
        OpenDesigns? open;
        do
        {
            (open, Fault) = await engine.TryAsync(EngineQuestions.Designs, request);
            request = request with { Step = request.Step + 1 };
        }
        while (asked == _openOf && open is { IsDone: false });

        // Of a kit that changed meanwhile the newer question tells.
        if (asked == _openOf && open is not null)
        {
            Open = open;
            Settle(open.Measures);
        }

        Say();
    }

    /// <summary>Looks for designs until all is tried, or somebody stops it.</summary>
    /// <param name="alone">The one measure whose best is asked for; none for what is chosen.</param>
    public async Task SearchAsync(string? alone = null)
    {
        if (IsSearching || desk.Kit is not { } kit)
        {
            return;
        }

        (_searched, _isStopping, IsSearching, Found, Chosen, Fault) = ((kit.Text, kit.Beside, kit.FileName), false, true, null, null, "");
        var limits = Limits.Where(limit => limit.Value.Trim().Length > 0).Select(limit => new FormValue(limit.Key, limit.Value.Trim())).ToList();
        IReadOnlyList<string> measures = alone is null ? [.. (Open?.Measures ?? []).Select(measure => measure.Key).Where(Measures.Contains)] : [alone];
        var request = new SearchRequest(kit.Text, kit.FileName, measures, limits, Most, 0);
        Progress = new SearchAnswer(false, 0, 0, "Planning the kit as it is.");
        Say();
        do
        {
            var (answer, fault) = await engine.TryAsync(EngineQuestions.Search, request with { IsLast = _isStopping });
            (Fault, Progress) = (fault, answer ?? Progress);
            request = request with { Step = request.Step + 1 };
            Say();
        }
        while (Fault.Length == 0 && Progress is { IsDone: false });

        (IsSearching, Found) = (false, Progress?.Found);
        Choose(Found is { Designs.Count: > 0 } found ? found.Designs[0] : null);
    }

    /// <summary>Ends the search after the design at hand; what was found until then is told.</summary>
    public void Stop()
    {
        _isStopping = true;
        Say();
    }

    /// <summary>Looks at a design.</summary>
    /// <param name="design">The design; none for none.</param>
    public void Choose(FoundDesign? design)
    {
        Chosen = design;
        Say();
    }

    /// <summary>Compares by a measure, or no longer.</summary>
    /// <param name="measure">The measure's key.</param>
    /// <param name="isCompared">Whether to.</param>
    public void Compare(string measure, bool isCompared)
    {
        _ = isCompared ? Measures.Add(measure) : Measures.Remove(measure);
        Say();
    }

    // What somebody chose for a kit stays, as far as it still has figures for it.
    private void Settle(IReadOnlyList<DesignMeasureLine> measures)
    {
        var known = measures.Where(measure => measure.Unknown.Length == 0).ToList();
        Measures.IntersectWith(known.Select(measure => measure.Key));
        if (Measures.Count == 0)
        {
            Measures = known.Where(measure => measure.IsUsual).Select(measure => measure.Key).ToHashSet(StringComparer.Ordinal);
        }
    }

    private void Say() => Changed?.Invoke(this, EventArgs.Empty);
}
