using StudioKit.Kits.Exploring;
using StudioKit.Physics;

namespace StudioKit.Planning.Exploring;

/// <summary>The measures of a plan, each rounded as it is told, so that designs that read the same are the same.</summary>
/// <param name="Amounts">In the order of the measures and in their units (<see cref="DesignLimit"/>); none where a plan has no such measure.</param>
public sealed record DesignFigures(ValueList<double?> Amounts)
{
    /// <summary>Every measure, in order.</summary>
    public static IReadOnlyList<DesignMeasure> Measures { get; } = Enum.GetValues<DesignMeasure>();

    /// <summary>An amount; none where the plan has no such measure.</summary>
    /// <param name="measure">The measure.</param>
    public double? this[DesignMeasure measure] => Amounts[(int)measure];

    /// <summary>Whether more of a measure is better.</summary>
    /// <param name="measure">The measure.</param>
    public static bool MoreIsBetter(DesignMeasure measure) =>
        measure is DesignMeasure.WhiteMargin or DesignMeasure.FirstWhite or DesignMeasure.Flashes or DesignMeasure.Depth or DesignMeasure.Wind or DesignMeasure.Cards;

    /// <summary>The smallest step of a measure that is told, in its unit.</summary>
    /// <param name="measure">The measure.</param>
    public static double StepOf(DesignMeasure measure) => measure switch
    {
        DesignMeasure.Price or DesignMeasure.WhiteMargin or DesignMeasure.Depth => 0.01,
        DesignMeasure.FirstWhite => 0.001,
        DesignMeasure.Energy or DesignMeasure.Smear or DesignMeasure.Wind => 0.1,
        _ => 1,
    };

    /// <summary>Whether a limit is kept; one on a measure that the plan has not is not.</summary>
    /// <param name="limit">The limit.</param>
    public bool Keep(DesignLimit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);

        // A limit of a third of a stop is kept by what is told as 0.33.
        var half = StepOf(limit.Measure) / 2;
        return this[limit.Measure] is { } amount && (MoreIsBetter(limit.Measure) ? amount > limit.Amount - half : amount < limit.Amount + half);
    }

    /// <summary>Whether no other figure of some measures is worse than another plan's, and one at least is better.</summary>
    /// <param name="other">The other plan's.</param>
    /// <param name="measures">The measures, each of which both have.</param>
    public bool Beats(DesignFigures other, IReadOnlyList<DesignMeasure> measures)
    {
        ArgumentNullException.ThrowIfNull(other);
        ArgumentNullException.ThrowIfNull(measures);
        var better = false;
        foreach (var measure in measures)
        {
            var gain = Gain(other, measure);
            if (gain < 0)
            {
                return false;
            }

            better |= gain > 0;
        }

        return better;
    }

    /// <summary>By how much a figure is better than another plan's, in the measure's unit; negative where it is worse.</summary>
    /// <param name="other">The other plan's.</param>
    /// <param name="measure">The measure; both have it.</param>
    public double Gain(DesignFigures other, DesignMeasure measure)
    {
        ArgumentNullException.ThrowIfNull(other);
        return (this[measure]!.Value - other[measure]!.Value) * (MoreIsBetter(measure) ? 1 : -1);
    }

    /// <summary>Whether all of some measures are the same as another plan's.</summary>
    /// <param name="other">The other plan's.</param>
    /// <param name="measures">The measures.</param>
    public bool AreLike(DesignFigures other, IReadOnlyList<DesignMeasure> measures)
    {
        ArgumentNullException.ThrowIfNull(other);
        ArgumentNullException.ThrowIfNull(measures);
        return measures.All(measure => this[measure].Equals(other[measure]));
    }
}
