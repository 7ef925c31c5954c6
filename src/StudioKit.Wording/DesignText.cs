using System.Globalization;
using StudioKit.Kits;
using StudioKit.Kits.Exploring;
using StudioKit.Physics;
using StudioKit.Planning.Exploring;

namespace StudioKit.Wording;

/// <summary>Designs and what they are compared by, in words.</summary>
public static class DesignText
{
    private const double GramsPerKilogram = 1000;

    /// <summary>A measure as a column's heading.</summary>
    /// <param name="measure">The measure.</param>
    public static string Name(DesignMeasure measure) => measure switch
    {
        DesignMeasure.Mass => "mass carried",
        DesignMeasure.Price => "price",
        DesignMeasure.WhiteMargin => "darkest margin",
        DesignMeasure.FirstWhite => "first frame white",
        DesignMeasure.Flashes => "flashes a set",
        DesignMeasure.Energy => "energy",
        DesignMeasure.PackedLength => "longest part",
        DesignMeasure.Pieces => "parts",
        DesignMeasure.Smear => "worst smear",
        DesignMeasure.Depth => "least depth",
        DesignMeasure.Wind => "wind",
        DesignMeasure.Cards => "cards",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Not a measure of designs."),
    };

    /// <summary>What a measure is, in a sentence's part.</summary>
    /// <param name="measure">The measure.</param>
    public static string About(DesignMeasure measure) => measure switch
    {
        DesignMeasure.Mass => "everything carried, bags included",
        DesignMeasure.Price => "the shopping list and what the options cost",
        DesignMeasure.WhiteMargin => "white margin of the darkest visible point of all cards, at the planned power",
        DesignMeasure.FirstWhite => "smallest probability of all cards that the first frame is white",
        DesignMeasure.Flashes => "flashes of a set of cells at the session's powers, of the flash that gives fewest",
        DesignMeasure.Energy => "what the session takes out of the cells",
        DesignMeasure.PackedLength => "longest part of the studio as it is carried",
        DesignMeasure.Pieces => "pipes, fittings, sheets and small parts of the studio to be put together",
        DesignMeasure.Smear => "smear at the subject, of the feature that smears most in its best card",
        DesignMeasure.Depth => "depth that one frame resolves, of the feature that has least in its best card",
        DesignMeasure.Wind => "highest mean wind that all that is built stands",
        DesignMeasure.Cards => "exposures that work",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Not a measure of designs."),
    };

    /// <summary>An amount with its unit.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="amount">The amount; none where there is none.</param>
    /// <param name="currency">Currency of prices.</param>
    public static string Amount(DesignMeasure measure, double? amount, string currency) => amount is not { } of ? "–" : measure switch
    {
        DesignMeasure.WhiteMargin => string.Create(CultureInfo.InvariantCulture, $"{of:+0.00;-0.00;0.00} {StopOrStops(of)}"),
        _ => Size(measure, of, currency),
    };

    /// <summary>What a figure of one design wins or gives up against another's; empty where they are the same.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="design">Figures of the one.</param>
    /// <param name="other">Figures of the other.</param>
    /// <param name="currency">Currency of prices.</param>
    public static string Difference(DesignMeasure measure, DesignFigures design, DesignFigures other, string currency)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(other);
        var gain = design[measure] is null || other[measure] is null ? 0 : design.Gain(other, measure);
        if (gain == 0)
        {
            return "";
        }

        var (size, wins) = (Size(measure, Math.Abs(gain), currency), gain > 0);
        return measure switch
        {
            DesignMeasure.Mass => wins ? $"saves {size}" : $"weighs {size} more",
            DesignMeasure.Price => wins ? $"saves {size}" : $"costs {size} more",
            DesignMeasure.WhiteMargin => $"{(wins ? "wins" : "costs")} {size} at the darkest point",
            DesignMeasure.FirstWhite => $"makes a white first frame {size} {(wins ? "likelier" : "less likely")}",
            DesignMeasure.Flashes => $"gives {size} {(wins ? "more" : "fewer")} a set",
            DesignMeasure.Energy => $"takes {size} {(wins ? "less" : "more")} out of the cells",
            DesignMeasure.PackedLength => $"packs {size} {(wins ? "shorter" : "longer")}",
            DesignMeasure.Pieces => $"has {size} {(wins ? "fewer" : "more")}",
            DesignMeasure.Smear => $"smears {size} {(wins ? "less" : "more")}",
            DesignMeasure.Depth => $"has {size} {(wins ? "more" : "less")} depth",
            DesignMeasure.Wind => $"stands {size} {(wins ? "more" : "less")} wind",
            DesignMeasure.Cards => $"has {size} {(wins ? "more" : "fewer")}",
            _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Not a measure of designs."),
        };
    }

    /// <summary>What a design changes in the kit, e.g. "sheet: opal-acrylic-2; pipe: 20 mm".</summary>
    /// <param name="changes">What it changes.</param>
    public static string Changes(ValueList<DesignDifference> changes) => changes.Count == 0
        ? "the kit as it is"
        : string.Join("; ", changes.Select(change => $"{change.Choice.Name}: {change.Option.Name}"));

    /// <summary>What a design wins and gives up against the kit as it is.</summary>
    /// <param name="design">The design.</param>
    /// <param name="result">The search that it comes from.</param>
    public static string AgainstOwn(ShownDesign design, DesignSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(result);
        if (design.Changes.Count == 0 || result.Own.Figures is not { } own)
        {
            return "";
        }

        var told = result.Aim.Measures
            .OrderByDescending(measure => design.Figures[measure] is not null && own[measure] is not null ? Math.Sign(design.Figures.Gain(own, measure)) : 0)
            .Select(measure => Difference(measure, design.Figures, own, CurrencyOf(result))).Where(words => words.Length > 0).ToList();
        return told.Count == 0 ? "as the kit in all that is compared" : string.Join(", ", told);
    }

    /// <summary>What was tried, and what can be said of what is shown.</summary>
    /// <param name="result">The search.</param>
    public static IReadOnlyList<string> Proof(DesignSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var all = $"{Number(result.Count)} of {Number(result.Space.Count)} designs were tried: {string.Join(", ", result.Tried.Select(tally => $"{Number(tally.Count)} {VerdictWords(tally.Verdict)}"))}.";
        List<string> told = [all];
        if (result.Failing.Count > 0)
        {
            told.Add($"Checks that most fail: {string.Join(", ", result.Failing.Take(4).Select(tally => $"{CheckNames.Of(tally.Check.Kind, tally.Check.Parts)} ({Number(tally.Count)})"))}.");
        }

        told.AddRange(result.CannotBe.Take(2).Select(why => $"Some cannot be: {why}"));
        told.Add(result.IsComplete ? "All there are: no other design beats one that is shown."
            : result.Shown.Count == 0 ? "Not all were tried: there may be others."
            : result.IsClosed ? $"Not all were tried, so others may beat what is shown; none that differs from it in a single choice does. Seed {Number(result.Seed)}."
            : $"Not all were tried, so others may beat what is shown; of {Number(result.Shown.Count)} shown, {Number(result.Shown.Count(design => design.IsClosed))} were compared with all that differ in a single choice. Seed {Number(result.Seed)}.");
        return told;
    }

    /// <summary>That no design stands within the limits, and what the best come to.</summary>
    /// <param name="result">A search that shows none.</param>
    public static string NoneStands(DesignSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var best = result.Best.Where(figure => figure.Amount is not null).Select(figure => $"{Name(figure.Measure)} {Amount(figure.Measure, figure.Amount, CurrencyOf(result))}").ToList();
        return best.Count == 0
            ? "no design that was tried passes all checks."
            : $"no design that was tried stands within the limits. The best that stand, each by itself: {string.Join(", ", best)}.";
    }

    /// <summary>What a choice does, e.g. "up to 640 g, 0.30 stop".</summary>
    /// <param name="effect">The effect.</param>
    /// <param name="result">The search that it comes from.</param>
    public static string Effect(ChoiceEffect effect, DesignSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(effect);
        ArgumentNullException.ThrowIfNull(result);
        if (effect.Compared == 0)
        {
            return "not tried";
        }

        var sizes = result.Aim.Measures.Zip(effect.Largest).Where(of => of.Second is > 0).Select(of => Size(of.First, of.Second!.Value, CurrencyOf(result))).ToList();
        var most = sizes.Count == 0 ? "changes nothing that is compared" : $"up to {string.Join(", ", sizes)}";
        return effect.Spoils == 0 ? most : $"{most}; {Number(effect.Spoils)} of {Number(effect.Compared)} changes do not stand";
    }

    /// <summary>Currency of a search's prices.</summary>
    /// <param name="result">The search.</param>
    public static string CurrencyOf(DesignSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.Space.AsWritten.Kit!.Stock.Currency;
    }

    /// <summary>Why a measure has no figure in a kit, and what would give it one.</summary>
    /// <param name="measure">The measure.</param>
    public static string Unknown(DesignMeasure measure) => $"The plan of the kit has no figure for '{MemberText.Of(measure)}', {About(measure)}: " + measure switch
    {
        DesignMeasure.Price => "something on its shopping list has no price. Give prices under 'stock' and 'frame.fittings'.",
        DesignMeasure.WhiteMargin or DesignMeasure.FirstWhite => "no set-up lights a sheet that is to be white.",
        DesignMeasure.Flashes or DesignMeasure.Energy => "it has no session, or a flash whose cells it does not know. Give 'subjects', and 'cell' and 'cell-count' of each flash.",
        DesignMeasure.Smear or DesignMeasure.Depth => "no subject names a feature that a card shows. Give 'feature' of a subject.",
        DesignMeasure.PackedLength or DesignMeasure.Wind => "nothing is built.",
        _ => "",
    };

    /// <summary>A number of designs, e.g. "1,250" or "31 million".</summary>
    /// <param name="count">How many.</param>
    public static string Number(double count) => count < 1e7 ? count.ToString("#,0", CultureInfo.InvariantCulture) : $"{(count / 1e6).ToString("#,0", CultureInfo.InvariantCulture)} million";

    private static string VerdictWords(DesignVerdict verdict) => verdict switch
    {
        DesignVerdict.Good => "stand",
        DesignVerdict.CannotBe => "cannot be",
        DesignVerdict.Fails => "fail a check",
        DesignVerdict.Unmeasured => "have no figure for a measure",
        DesignVerdict.BeyondLimit => "are beyond a limit",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Not a verdict on a design."),
    };

    private static string Size(DesignMeasure measure, double amount, string currency) => measure switch
    {
        DesignMeasure.Mass => Math.Abs(amount) < GramsPerKilogram ? Text(amount, "0", "g") : Text(amount / GramsPerKilogram, "0.00", "kg"),
        DesignMeasure.Price => Text(amount, "0.00", currency),
        DesignMeasure.WhiteMargin => Text(amount, "0.00", StopOrStops(amount)),
        DesignMeasure.FirstWhite => Text(amount * 100, "0.#", "%"),
        DesignMeasure.Flashes => Text(amount, "0", amount == 1 ? "flash" : "flashes"),
        DesignMeasure.Energy => Text(amount, "0.0", "Wh"),
        DesignMeasure.PackedLength => Text(amount, "0", "mm"),
        DesignMeasure.Pieces => Text(amount, "0", amount == 1 ? "part" : "parts"),
        DesignMeasure.Smear => Text(amount, "0.0", "µm"),
        DesignMeasure.Depth => Text(amount, "0.00", "mm"),
        DesignMeasure.Wind => Text(amount, "0.0", "m/s"),
        DesignMeasure.Cards => Text(amount, "0", amount == 1 ? "card" : "cards"),
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Not a measure of designs."),
    };

    private static string StopOrStops(double amount) => Math.Abs(amount) > 1 ? "stops" : "stop";

    private static string Text(double amount, string format, string unit) => $"{amount.ToString(format, CultureInfo.InvariantCulture)} {unit}";
}
