namespace StudioKit.Planning.Exploring;

/// <summary>Searches the designs that a kit leaves open for those that no other beats.</summary>
/// <remarks>
/// Every design is planned as its written kit would be. Where there are no more than asked for, all are tried. Else the search goes from each design that none beats so far to all that differ
/// from it in one choice, and where those are through mixes and changes designs by a seed; it ends when it has tried as many as asked for and no single change improves one that it shows.
/// </remarks>
public static class DesignSearch
{
    private const int Litter = 32;
    private const int Vain = 2000;
    private const int Unfit = 8;

    /// <summary>Looks for designs.</summary>
    /// <param name="space">The designs.</param>
    /// <param name="aim">What they are compared by.</param>
    /// <param name="options">How they are looked for.</param>
    /// <param name="progress">Told now and then; none where nobody watches.</param>
    /// <param name="stop">Ends the search; what was found until then is the result.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option is outside its range.</exception>
    public static DesignSearchResult Run(DesignSpace space, DesignAim aim, DesignSearchOptions options, IProgress<DesignProgress>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(space);
        ArgumentNullException.ThrowIfNull(aim);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Most, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(options.AtOnce, 1, nameof(options));
        var all = (int)Math.Min(space.Count, options.Most);
        DesignTrials? trials = null;
        trials = new DesignTrials(space, aim, options, () => progress?.Report(new(trials!.Tried.Count, Math.Max(all, trials.Tried.Count), trials.Frontier.Shown.Count)), stop);

        // The kit as it is written is always known, however soon it is stopped.
        var own = new DesignEvaluator(space, aim, options.Services).Try(space.Own, CancellationToken.None);
        trials.Keep(own);
        var stopped = false;
        try
        {
            if (space.Count <= options.Most)
            {
                trials.Try(DesignOrder.All(space));
            }
            else
            {
                Search(space, trials, options);
            }
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            stopped = true;
        }

        return new DesignSearchSummary(space, aim, trials, own).Of(options.Seed, stopped);
    }

    private static void Search(DesignSpace space, DesignTrials trials, DesignSearchOptions options)
    {
        var chance = new Random(options.Seed);
        var closed = new HashSet<DesignCode>();
        trials.Try(space.BesideOf(space.Own));
        while (true)
        {
            if (trials.Frontier.Shown.Select(design => design.Code).FirstOrDefault(code => !closed.Contains(code)) is { } open)
            {
                closed.Add(open);
                trials.Try(space.BesideOf(open));
                continue;
            }

            var young = trials.Tried.Count < options.Most ? Young(space, trials, chance) : [];
            if (young.Count == 0)
            {
                return;
            }

            trials.Try(young);
        }
    }

    // Designs not tried yet: mixed of two of the best, with a choice changed here and there, or wholly by chance.
    private static List<DesignCode> Young(DesignSpace space, DesignTrials trials, Random chance)
    {
        var parents = ParentsOf(trials);
        var young = new HashSet<DesignCode>();
        for (var tries = 0; tries < Vain && young.Count < Litter; tries++)
        {
            var (one, other) = (parents[chance.Next(parents.Count)], parents[chance.Next(parents.Count)]);
            var anew = chance.Next(4) == 0;
            var child = new DesignCode([.. space.Choices.Select((choice, place) => anew || chance.Next(space.Choices.Count) == 0
                ? chance.Next(choice.Options.Count)
                : (chance.Next(2) == 0 ? one : other).Options[place])]);
            if (!trials.Tried.ContainsKey(child))
            {
                young.Add(child);
            }
        }

        return [.. young];
    }

    // Where none is good yet, those that fail least.
    private static List<DesignCode> ParentsOf(DesignTrials trials) => trials.Frontier.Shown.Count > 0
        ? [.. trials.Frontier.Shown.Select(design => design.Code)]
        : [.. trials.Tried.Values.Where(design => design.Figures is not null).OrderBy(design => design.Failing.Count).ThenBy(design => design.Code.ToString(), StringComparer.Ordinal).Take(Unfit).Select(design => design.Code)];
}
