using StudioKit.Kits;
using StudioKit.Kits.Exploring;
using StudioKit.Planning.Exploring;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Tells what a kit leaves open, and what a search among its designs found.</summary>
internal static class DesignTelling
{
    private const string CutNote = "Prices: pipes are shared out first-fit on this page; the command line may find a way that saves a length of stock.";

    /// <summary>What a kit leaves open.</summary>
    public static OpenDesigns Of(KitSpec kit, DesignSpaceReading reading, DesignFigures own) => reading.Space is not { } space
        ? new OpenDesigns("What the kit leaves open has faults.", [.. reading.Problems.Select(Of)])
        : new OpenDesigns("", [])
        {
            Said = $"{(reading.IsUsual ? "The kit marks nothing as open, so what usually is open is varied" : "The kit's own choices")}: {Counted(space.Choices.Count, "choice", "choices")}, {DesignText.Number(space.Count)} designs."
                + (reading.IsUsual ? " An 'explore' section in its text says otherwise." : ""),
            Choices = [.. space.Choices.Select(Of)],
            Measures = [.. DesignFigures.Measures.Select(measure => Of(measure, kit, own))],
            Limits = [.. (kit.Explore?.Limits ?? []).Select(limit => limit.Text)],
        };

    /// <summary>How far a search has come.</summary>
    /// <param name="progress">How far.</param>
    /// <param name="most">As many as were asked for.</param>
    public static SearchAnswer Progress(DesignProgress progress, int most)
    {
        // Past them, what is shown is still held against all that differs from it in one choice.
        var tried = progress.Tried <= most ? $"{DesignText.Number(progress.Tried)} of {DesignText.Number(progress.Of)} designs tried"
            : $"{DesignText.Number(progress.Tried)} designs tried, now those that differ in one choice from what is shown";
        return new SearchAnswer(false, progress.Tried, progress.Of, $"{tried}, {DesignText.Number(progress.Shown)} of them beaten by none.");
    }

    /// <summary>What a search found.</summary>
    public static FoundDesigns Of(DesignSearchResult result, bool isUsual) => new(
        result.Space.AsWritten.ContentHash, [.. result.Aim.Measures.Select(DesignText.Name)], Amounts(result, result.Own.Figures), [.. result.Shown.Select(design => Of(design, result))], Said(result))
    {
        Effects = [.. result.Effects.Select(effect => new StatePair(effect.Choice.Name, string.Join(", ", effect.Choice.Options.Select(option => option.Name)), DesignText.Effect(effect, result)))],
        Proof =
        [
            .. isUsual ? ["The kit marks nothing as open, so what usually is open was varied."] : Array.Empty<string>(),
            .. DesignText.Proof(result),
            $"{string.Join("; ", result.Aim.Measures.Select(measure => $"{DesignText.Name(measure)}: {DesignText.About(measure)}"))}.",
            .. result.Best.Any(best => best.Measure == DesignMeasure.Price) ? [CutNote] : Array.Empty<string>(),
        ],
        Picture = new DesignPictureTelling(result).Of(),
    };

    private static Fault Of(DesignProblem problem) =>
        new(problem.At?.Line ?? 0, problem.At?.Column ?? 0, true, DiagnosticCodes.Contradiction, DesignProblemText.Message(problem), DesignProblemText.Hint(problem) ?? "");

    private static StatePair Of(DesignChoice choice) =>
        new(choice.Name, choice.Options[choice.Own].Name, string.Join(", ", choice.Options.Where(option => !option.IsOwn).Select(option => option.Name)));

    private static DesignMeasureLine Of(DesignMeasure measure, KitSpec kit, DesignFigures own) => new(
        MemberText.Of(measure), DesignText.Name(measure), DesignText.About(measure),
        own[measure] is null ? "" : DesignText.Amount(measure, own[measure], kit.Stock.Currency),
        own[measure] is null ? DesignText.Unknown(measure) : "")
    {
        MoreIsBetter = DesignFigures.MoreIsBetter(measure),
        LimitExample = Example(measure),
        IsUsual = (kit.Explore is { Measures.Count: > 0 } explore ? explore.Measures : DesignAim.UsualFor(own)).Contains(measure),
    };

    private static FoundDesign Of(ShownDesign design, DesignSearchResult result) => new(
        design.Number, design.Code.ToString(), Amounts(result, design.Figures), DesignText.AgainstOwn(design, result), DesignText.Changes(design.Changes))
    {
        Wins = Differences(design, result, isWin: true),
        GivesUp = Differences(design, result, isWin: false),
        AllFigures =
        [
            .. DesignFigures.Measures.Where(measure => design.Figures[measure] is not null).Select(measure => new StatePair(
                DesignText.Name(measure), DesignText.Amount(measure, result.Own.Figures?[measure], DesignText.CurrencyOf(result)), DesignText.Amount(measure, design.Figures[measure], DesignText.CurrencyOf(result)))),
        ],
        Beside = Beside(design, result),
    };

    private static List<string> Amounts(DesignSearchResult result, DesignFigures? figures) =>
        [.. result.Aim.Measures.Select(measure => DesignText.Amount(measure, figures?[measure], DesignText.CurrencyOf(result)))];

    // What is compared comes first.
    private static List<string> Differences(ShownDesign design, DesignSearchResult result, bool isWin) => result.Own.Figures is not { } own ? [] :
    [
        .. result.Aim.Measures.Concat(DesignFigures.Measures).Distinct()
            .Where(measure => design.Figures[measure] is not null && own[measure] is not null && design.Figures.Gain(own, measure) is var gain && (isWin ? gain > 0 : gain < 0))
            .Select(measure => DesignText.Difference(measure, design.Figures, own, DesignText.CurrencyOf(result))),
    ];

    private static string Beside(ShownDesign design, DesignSearchResult result)
    {
        var alike = design.Alike.Count == 0 ? "" : $" {Counted(design.Alike.Count, "other design comes", "other designs come")} to the same in all that is compared.";
        var closed = result.IsComplete ? "" : design.IsClosed ? " Every design that differs from it in one choice was tried, and none beats it." : " Not all that differ from it in one choice were tried.";
        return $"{alike}{closed}".Trim();
    }

    private static string Said(DesignSearchResult result)
    {
        var none = result.Shown.Count == 0 ? DesignText.NoneStands(result) : "";
        var found = none.Length > 0 ? $"{char.ToUpperInvariant(none[0])}{none[1..]}" : $"{Counted(result.Shown.Count, "design that no other beats", "designs that no other beats")}.";
        var own = result.Own.Verdict is DesignVerdict.Good ? "" : result.Own.Verdict == DesignVerdict.BeyondLimit ? " The kit as it is lies beyond a limit." : " The kit as it is does not count: its plan fails a check.";
        return $"{(result.IsStopped ? "Stopped before all was tried; this is what was found so far. " : "")}{found}{own}";
    }

    private static string Counted(int count, string one, string several) => $"{DesignText.Number(count)} {(count == 1 ? one : several)}";

    private static string Example(DesignMeasure measure) => measure switch
    {
        DesignMeasure.Mass => "3 kg",
        DesignMeasure.Price => "60",
        DesignMeasure.WhiteMargin => "1/3 stop",
        DesignMeasure.FirstWhite => "70 %",
        DesignMeasure.Flashes => "200",
        DesignMeasure.Energy => "12 Wh",
        DesignMeasure.PackedLength => "45 cm",
        DesignMeasure.Pieces => "30",
        DesignMeasure.Smear => "20 µm",
        DesignMeasure.Depth => "3 mm",
        DesignMeasure.Wind => "6 m/s",
        DesignMeasure.Cards => "8",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Not a measure of designs."),
    };
}
