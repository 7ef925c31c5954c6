using System.Runtime.CompilerServices;

namespace StudioKit.Planning;

/// <summary>The cards of some exposures in the order in which they hang on the ring, put in order once however many ask for a number.</summary>
internal sealed class CardRing
{
    // A plan is a value and compared as one, so what is only remembered of it is kept beside it.
    private static readonly ConditionalWeakTable<IReadOnlyList<ExposurePlan>, CardRing> Known = [];

    private readonly Dictionary<(string SetUp, string Framing), int> _numbers = [];

    private CardRing(IReadOnlyList<ExposurePlan> exposures)
    {
        var ordered = exposures.OrderBy(exposure => exposure.Framing.Magnification.Value).ToLookup(exposure => exposure.IsUsable);
        (On, Off) = ([.. ordered[true]], [.. ordered[false]]);
        foreach (var exposure in On.Concat(Off))
        {
            _numbers.TryAdd((exposure.SetUp, exposure.Framing.Name), _numbers.Count + 1);
        }
    }

    /// <summary>Those that work: by magnification, and within one in the order of the set-ups.</summary>
    public IReadOnlyList<ExposurePlan> On { get; }

    /// <summary>Those that cannot work, in the same order.</summary>
    public IReadOnlyList<ExposurePlan> Off { get; }

    /// <summary>The ring of some exposures.</summary>
    public static CardRing Of(IReadOnlyList<ExposurePlan> exposures) => Known.GetValue(exposures, static of => new CardRing(of));

    /// <summary>Number of a card, counted from 1, those that cannot work last; none where there is no such card.</summary>
    public int? Number(string setUp, string framing) => _numbers.TryGetValue((setUp, framing), out var number) ? number : null;
}
