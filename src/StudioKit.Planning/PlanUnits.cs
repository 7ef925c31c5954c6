using StudioKit.Kits;

namespace StudioKit.Planning;

/// <summary>The units in which everything is told within a scope, as a culture is chosen once for all texts of a thread.</summary>
/// <remarks>It is set at one place only, around the making of a set of sheets; outside of every scope all is metric. No number in a plan depends on it, only the words for it.</remarks>
/// <param name="Units">The units.</param>
/// <param name="Written">Lengths that the kit gives in inches.</param>
public sealed record PlanUnits(TextUnits Units, WrittenLengths Written)
{
    private static readonly AsyncLocal<PlanUnits?> Chosen = new();

    /// <summary>Metric, whatever the kit has written.</summary>
    public static PlanUnits Metric { get; } = new(TextUnits.Metric, WrittenLengths.None);

    /// <summary>Those of the innermost scope.</summary>
    public static PlanUnits Current => Chosen.Value ?? Metric;

    /// <summary>Tells something in these units.</summary>
    /// <typeparam name="T">What is told.</typeparam>
    /// <param name="telling">Makes all of it before it returns: what is enumerated later is told in other units.</param>
    /// <exception cref="ArgumentNullException">There is nothing to tell.</exception>
    public T Tell<T>(Func<T> telling)
    {
        ArgumentNullException.ThrowIfNull(telling);
        var before = Chosen.Value;
        Chosen.Value = this;
        try
        {
            return telling();
        }
        finally
        {
            Chosen.Value = before;
        }
    }
}
