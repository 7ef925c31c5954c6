using StudioKit.Kits.Exploring;
using StudioKit.Planning.Features;
using StudioKit.Planning.Packing;

namespace StudioKit.Planning.Exploring;

/// <summary>Reads the measures of designs from their plans.</summary>
public static class FigureReader
{
    /// <summary>The measures of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="price">What the options chosen cost beside its shopping list.</param>
    /// <exception cref="ArgumentNullException">There is no plan.</exception>
    public static DesignFigures Of(Plan plan, decimal price)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new([.. DesignFigures.Measures.Select(measure => Rounded(measure, Amount(plan, price, measure)))]);
    }

    private static double? Amount(Plan plan, decimal price, DesignMeasure measure) => measure switch
    {
        DesignMeasure.Mass => plan.Pack.Total.Grams,
        DesignMeasure.Price => plan.Workshop is not { } workshop ? (double)price : workshop.TotalCost is { } cost ? (double)(cost + price) : null,
        DesignMeasure.WhiteMargin => plan.LeastWhiteMargin?.Value,
        DesignMeasure.FirstWhite => Least(plan.Exposures.Where(exposure => exposure.WhiteMargin is not null).Select(exposure => exposure.Verdict.FirstFrame)),
        DesignMeasure.Flashes => plan.Session is null ? null : Least(plan.Session.Flashes.Select(use => (double?)use.FlashesCarried / use.SetsCarried)),
        DesignMeasure.Energy => Energy(plan),
        DesignMeasure.PackedLength => Most(plan.Pack.Items.Where(item => item is { Part: not null, LongestSide: not null }).Select(item => item.LongestSide?.Millimeters)),
        DesignMeasure.Pieces => (plan.Frame is { } frame ? frame.Geometry.Members.Count + frame.Fittings.Sum(fitting => fitting.Count) : 0)
            + plan.Pack.Items.Where(item => item.Part is not (null or StudioPart.Frame)).Sum(item => item.Count),
        DesignMeasure.Smear => Most(plan.Features.Select(FeatureOf).Distinct().Select(feature => Least(Smears(plan, feature)))),
        DesignMeasure.Depth => Least(plan.Features.GroupBy(FeatureOf).Select(feature => Most(feature.Where(seen => seen.ShownWhole).Select(seen => (double?)(seen.Depth?.Millimeters ?? 0))))),
        DesignMeasure.Wind => HighestWind.Of(plan)?.MetersPerSecond,
        DesignMeasure.Cards => plan.Exposures.Count(exposure => exposure.IsUsable),
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Not a measure of designs."),
    };

    private static string FeatureOf(FeaturePlan feature) => feature.Subject;

    private static IEnumerable<double?> Smears(Plan plan, string subject) =>
        plan.Exposures.Where(exposure => exposure.IsUsable).SelectMany(exposure => exposure.FeatureSmears).Where(smear => smear.Subject == subject).Select(smear => (double?)smear.AtSubject.Micrometers);

    // What a flash fires of a set's full-power flashes it takes of that set's energy.
    private static double? Energy(Plan plan)
    {
        var sum = 0.0;
        foreach (var use in plan.Session?.Flashes ?? [])
        {
            if (plan.Pack.Cells.FirstOrDefault(cells => cells.Flash == use.Flash) is not { } cells)
            {
                return null;
            }

            sum += use.FullPowerFlashes / plan.Kit.Flashes.First(flash => flash.Name == use.Flash).FullPowerFlashes * use.CellsPerSet * cells.EnergyEach.WattHours;
        }

        return plan.Session is null ? null : sum;
    }

    // Of none there is none; where one is not known, neither is the least.
    private static double? Least(IEnumerable<double?> amounts) => amounts.ToList() is { Count: > 0 } all && all.TrueForAll(amount => amount is not null) ? all.Min() : null;

    private static double? Most(IEnumerable<double?> amounts) => amounts.ToList() is { Count: > 0 } all && all.TrueForAll(amount => amount is not null) ? all.Max() : null;

    // What is counted on is rounded down where more is better: a flash or a metre a second too few does no harm.
    private static double? Rounded(DesignMeasure measure, double? amount)
    {
        var step = DesignFigures.StepOf(measure);
        return amount is not { } exact ? null
            : measure is DesignMeasure.Flashes or DesignMeasure.Wind ? Whole(Math.Floor((exact / step) + 1e-9), step)
            : Whole(Math.Round(exact / step), step);
    }

    // So that equal steps are equal numbers, whichever way they came about.
    private static double Whole(double steps, double step) => step < 1 ? steps / Math.Round(1 / step) : steps * step;
}
