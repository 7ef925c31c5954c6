namespace StudioKit.Planning.Exploring;

/// <summary>A search for designs that is taken step by step, so that others have their turn in between; its answer does not depend on how long a step is.</summary>
/// <remarks>
/// Every design is planned as its written kit would be. Where there are no more than asked for, all are tried. Else the search goes from each design that none beats so far to all that differ
/// from it in one choice, and where those are through mixes and changes designs by a seed; it ends when it has tried as many as asked for and no single change improves one that it shows.
/// </remarks>
public sealed class DesignSearchSteps
{
    private const int Litter = 32;
    private const int Vain = 2000;
    private const int Unfit = 8;

    private readonly DesignSpace _space;
    private readonly DesignAim _aim;
    private readonly DesignSearchOptions _options;
    private readonly DesignTrials _trials;
    private readonly TriedDesign _own;
    private readonly IEnumerator<int> _steps;
    private readonly CancellationToken _stop;
    private bool _isThrough;

    /// <summary>Begins a search: plans the kit as it is written, so that this is known however soon the search is stopped.</summary>
    /// <param name="space">The designs.</param>
    /// <param name="aim">What they are compared by.</param>
    /// <param name="options">How they are looked for.</param>
    /// <param name="stop">Ends the search in the middle of a step.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option is outside its range.</exception>
    public DesignSearchSteps(DesignSpace space, DesignAim aim, DesignSearchOptions options, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(space);
        ArgumentNullException.ThrowIfNull(aim);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Most, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(options.AtOnce, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(options.InAStep, 1, nameof(options));
        (_space, _aim, _options, _stop) = (space, aim, options, stop);
        _trials = new DesignTrials(space, aim, options, stop);
        _own = new DesignEvaluator(space, aim, options.Services).Try(space.Own, CancellationToken.None);
        _trials.Keep(_own);
        _steps = (space.Count <= options.Most ? _trials.Try(DesignOrder.All(space)) : Search()).GetEnumerator();
    }

    /// <summary>How far it has come.</summary>
    public DesignProgress Progress => new(_trials.Tried.Count, Math.Max((int)Math.Min(_space.Count, _options.Most), _trials.Tried.Count), _trials.Frontier.Shown.Count);

    /// <summary>Tries some more designs.</summary>
    /// <returns>Whether there was something left to try and nobody stopped it.</returns>
    public bool Next()
    {
        try
        {
            _isThrough = _isThrough || !_steps.MoveNext();
            return !_isThrough;
        }
        catch (OperationCanceledException) when (_stop.IsCancellationRequested)
        {
            return false;
        }
    }

    /// <summary>What was found until now.</summary>
    public DesignSearchResult Result() => new DesignSearchSummary(_space, _aim, _trials, _own).Of(_options.Seed, !_isThrough);

    private IEnumerable<int> Search()
    {
        var chance = new Random(_options.Seed);
        var closed = new HashSet<DesignCode>();
        IEnumerable<DesignCode> next = _space.BesideOf(_space.Own);
        while (next is not ICollection<DesignCode> { Count: 0 })
        {
            foreach (var tried in _trials.Try(next))
            {
                yield return tried;
            }

            next = _trials.Frontier.Shown.Select(design => design.Code).FirstOrDefault(closed.Add) is { } open ? _space.BesideOf(open)
                : _trials.Tried.Count < _options.Most ? Young(chance)
                : [];
        }
    }

    // Designs not tried yet: mixed of two of the best, with a choice changed here and there, or wholly by chance.
    private List<DesignCode> Young(Random chance)
    {
        var parents = Parents();
        var young = new HashSet<DesignCode>();
        for (var tries = 0; tries < Vain && young.Count < Litter; tries++)
        {
            var (one, other) = (parents[chance.Next(parents.Count)], parents[chance.Next(parents.Count)]);
            var anew = chance.Next(4) == 0;
            var child = new DesignCode([.. _space.Choices.Select((choice, place) => anew || chance.Next(_space.Choices.Count) == 0
                ? chance.Next(choice.Options.Count)
                : (chance.Next(2) == 0 ? one : other).Options[place])]);
            if (!_trials.Tried.ContainsKey(child))
            {
                young.Add(child);
            }
        }

        return [.. young];
    }

    // Where none is good yet, those that fail least.
    private List<DesignCode> Parents() => _trials.Frontier.Shown.Count > 0
        ? [.. _trials.Frontier.Shown.Select(design => design.Code)]
        : [.. _trials.Tried.Values.Where(design => design.Figures is not null).OrderBy(design => design.Failing.Count).ThenBy(design => design.Code.ToString(), StringComparer.Ordinal).Take(Unfit).Select(design => design.Code)];
}
