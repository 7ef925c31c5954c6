using StudioKit.Kits.Exploring;
using StudioKit.Physics;

namespace StudioKit.Planning.Exploring;

/// <summary>What designs are compared by.</summary>
/// <param name="Measures">Two to four measures; one alone where a single best design is looked for.</param>
/// <param name="Limits">How far measures may go.</param>
public sealed record DesignAim(ValueList<DesignMeasure> Measures, ValueList<DesignLimit> Limits)
{
    private const int UsualCount = 3;

    // In the order in which they are taken where nobody says.
    private static readonly DesignMeasure[] Usual =
        [DesignMeasure.Mass, DesignMeasure.WhiteMargin, DesignMeasure.Price, DesignMeasure.Pieces, DesignMeasure.Wind, DesignMeasure.Cards];

    /// <summary>What is compared where nobody says: mass, the darkest margin and the price, with others in the place of those that a plan has no figure for.</summary>
    /// <param name="figures">The figures of the kit as it is written.</param>
    public static ValueList<DesignMeasure> UsualFor(DesignFigures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return [.. Usual.Where(measure => figures[measure] is not null).Take(UsualCount)];
    }

    /// <summary>What becomes of a plan with these figures that passes all its checks.</summary>
    /// <param name="figures">The figures.</param>
    public DesignVerdict VerdictOf(DesignFigures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return Measures.Any(measure => figures[measure] is null) ? DesignVerdict.Unmeasured : Limits.All(figures.Keep) ? DesignVerdict.Good : DesignVerdict.BeyondLimit;
    }
}
