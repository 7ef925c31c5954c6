namespace StudioKit.Planning.Exploring;

/// <summary>Searches the designs that a kit leaves open for those that no other beats.</summary>
public static class DesignSearch
{
    /// <summary>Looks for designs until all is tried that is to be.</summary>
    /// <param name="space">The designs.</param>
    /// <param name="aim">What they are compared by.</param>
    /// <param name="options">How they are looked for.</param>
    /// <param name="progress">Told now and then; none where nobody watches.</param>
    /// <param name="stop">Ends the search; what was found until then is the result.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option is outside its range.</exception>
    public static DesignSearchResult Run(DesignSpace space, DesignAim aim, DesignSearchOptions options, IProgress<DesignProgress>? progress = null, CancellationToken stop = default)
    {
        var steps = new DesignSearchSteps(space, aim, options, stop);
        while (steps.Next())
        {
            progress?.Report(steps.Progress);
        }

        return steps.Result();
    }
}
