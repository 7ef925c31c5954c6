using StudioKit.Kits.Exploring;
using StudioKit.Physics;

namespace StudioKit.Planning.Exploring;

/// <summary>Designs tried → what is told of them.</summary>
internal sealed class DesignSearchSummary(DesignSpace space, DesignAim aim, DesignTrials trials, TriedDesign own)
{
    /// <summary>The result.</summary>
    public DesignSearchResult Of(int seed, bool isStopped)
    {
        var tried = trials.Tried.Values.ToList();
        var shown = Shown();
        return new DesignSearchResult
        {
            Space = space,
            Aim = aim,
            Own = own,
            Shown = shown,
            Effects = [.. space.Choices.Select((choice, place) => EffectOf(choice, place, shown)).OrderByDescending(effect => effect.Share).ThenByDescending(effect => effect.Spoils)],
            Tried = [.. tried.GroupBy(design => design.Verdict).OrderBy(of => of.Key).Select(of => new DesignTally(of.Key, of.Count()))],
            Failing = [.. tried.SelectMany(design => design.Failing).GroupBy(check => check).OrderByDescending(of => of.Count()).ThenBy(of => of.Key.Kind).ThenBy(of => string.Join('\n', of.Key.Parts), StringComparer.Ordinal).Select(of => new FailingTally(of.Key, of.Count()))],
            CannotBe = [.. tried.Select(design => design.Why).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            Best = [.. aim.Measures.Concat(aim.Limits.Select(limit => limit.Measure)).Distinct().Select(measure => new BestFigure(measure, Best(measure)))],
            Seed = seed,
            IsStopped = isStopped,
        };
    }

    private ValueList<ShownDesign> Shown()
    {
        var inOrder = trials.Frontier.Shown
            .OrderBy(design => design, Comparer<TriedDesign>.Create(ByMeasures))
            .ThenBy(design => ChangesOf(design.Code).Count())
            .ThenBy(design => design.Code, Comparer<DesignCode>.Create(ByOptions))
            .ToList();
        var shown = new List<ShownDesign>();
        foreach (var design in inOrder)
        {
            if (shown.Count > 0 && shown[^1].Figures.AreLike(design.Figures!, aim.Measures))
            {
                shown[^1] = shown[^1] with { Alike = [.. shown[^1].Alike, design.Code] };
                continue;
            }

            shown.Add(new(shown.Count + 1, design.Code, design.Figures!, [.. ChangesOf(design.Code)], [], space.BesideOf(design.Code).All(trials.Tried.ContainsKey)));
        }

        return [.. shown];
    }

    private int ByMeasures(TriedDesign one, TriedDesign other) =>
        aim.Measures.Select(measure => other.Figures!.Gain(one.Figures!, measure)).Where(gain => gain != 0).Select(Math.Sign).FirstOrDefault();

    private static int ByOptions(DesignCode one, DesignCode other) => one.Options.Zip(other.Options, (a, b) => a.CompareTo(b)).FirstOrDefault(order => order != 0);

    private IEnumerable<DesignDifference> ChangesOf(DesignCode code) =>
        space.Choices.Select((choice, place) => (Choice: choice, Place: place)).Where(of => code.Options[of.Place] != of.Choice.Own).Select(of => new DesignDifference(of.Choice, of.Choice.Options[code.Options[of.Place]]));

    private ChoiceEffect EffectOf(DesignChoice choice, int place, ValueList<ShownDesign> shown)
    {
        var pairs = shown.Select(design => design.Code).Append(own.Code).Distinct()
            .SelectMany(code => Enumerable.Range(0, choice.Options.Count).Where(option => option != code.Options[place]).Select(option => (From: Known(code), To: Known(code.With(place, option)))))
            .Where(pair => pair is { From: not null, To: not null }).ToList();
        var largest = aim.Measures.Select(measure => Largest(pairs.Select(pair => Change(pair.From!, pair.To!, measure)))).ToList();
        var share = aim.Measures.Zip(largest, (measure, change) => change is > 0 && Span(measure) is > 0 and var span ? Math.Min(1, change.Value / span) : 0).DefaultIfEmpty(0).Max();
        return new(choice, [.. largest], share, pairs.Count(pair => !Stands(pair.To!)), pairs.Count);
    }

    private TriedDesign? Known(DesignCode code) => trials.Tried.GetValueOrDefault(code);

    private static double? Change(TriedDesign from, TriedDesign to, DesignMeasure measure) =>
        Stands(from) && Stands(to) && from.Figures![measure] is { } before && to.Figures![measure] is { } after ? Math.Abs(after - before) : null;

    private static bool Stands(TriedDesign design) => design.Verdict is not (DesignVerdict.CannotBe or DesignVerdict.Fails);

    private static double? Largest(IEnumerable<double?> changes) => changes.Max();

    private List<double> Amounts(DesignMeasure measure) => [.. trials.Tried.Values.Where(Stands).Select(design => design.Figures![measure]).OfType<double>()];

    private double Span(DesignMeasure measure) => Amounts(measure) is { Count: > 0 } amounts ? amounts.Max() - amounts.Min() : 0;

    private double? Best(DesignMeasure measure) => Amounts(measure) is { Count: > 0 } amounts ? DesignFigures.MoreIsBetter(measure) ? amounts.Max() : amounts.Min() : null;
}
