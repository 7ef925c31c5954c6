using StudioKit.Kits.Cards;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Covers;
using StudioKit.Planning.Features;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>The starting-exposure card of one framing in one set-up, made by a template.</summary>
/// <remarks>
/// What must be seen first never leaves the front. Where the front is too full even at the least sizes of type, its last blocks move to the back.
/// </remarks>
internal sealed class ExposureCard
{
    private static readonly double[] Shares = [1, 0.92, 0.84, 0.76, 0.68, 0.6, 0.52];

    // These stay on the front, and come first on a back made of moved blocks alone.
    private static readonly CardBlock[] Heads = [CardBlock.SetUp, CardBlock.Framing];
    private static readonly CardBlock[] Fixed = [.. Heads, CardBlock.Settings, CardBlock.Flashes];

    private readonly CardTemplate _template;
    private readonly Stamp _stamp;
    private readonly ExposurePlan _exposure;
    private readonly CardBlocks _blocks;

    private ExposureCard(CardBlocks blocks, CardTemplate template) => (_blocks, _exposure, _template, _stamp) = (blocks, blocks.Exposure, template, blocks.Stamp);

    public static (Card Card, IReadOnlyList<string> Problems) Make(
        ExposurePlan exposure, CardAdvice advice, CardTemplate template, Stamp stamp, CardPlace place, IReadOnlyList<FeaturePlan>? features = null, CoverPlan? cover = null, IReadOnlyList<LightStandPlan>? stands = null,
        UprightLightPlan? upright = null)
    {
        var card = new ExposureCard(new CardBlocks(exposure, advice, place, stamp) { Features = features ?? [], Cover = cover, Stands = stands ?? [], Upright = upright }, template);
        return exposure.IsUsable ? card.Settings() : card.Impossible();
    }

    private (Card Card, IReadOnlyList<string> Problems) Impossible()
    {
        var side = Side(isBack: false, []);
        for (var changes = _blocks.Advice.Mending.Count; changes >= 0; changes--)
        {
            if (Fitting(side, type => _blocks.Impossible(type, changes)) is { } marks)
            {
                return (new Card(Drawn(side, marks)), []);
            }
        }

        return TooSmall();
    }

    private (Card Card, IReadOnlyList<string> Problems) Settings()
    {
        var movable = _template.Front.Where(block => !Fixed.Contains(block) && block != CardBlock.Rule).ToList();

        // What fires each flash is set once for the session: a front that is full without it leaves it to the session plan.
        var whole = Side(isBack: false, _template.Front);
        if (_exposure.Lights.Any(light => light.FiredBy is not null) && Fitting(whole, type => _blocks.Of(_template.Front, type)) is null
            && Fitting(whole, type => (_blocks with { SaysFiring = false }).Of(_template.Front, type)) is { } without)
        {
            var (back, problems) = Back([]);
            return (new Card(Drawn(whole, without), back), problems);
        }

        // The last blocks move to the back until the front has room; where the back then has none, one of the others instead, and what fires each flash stays with the session plan.
        (Card Card, IReadOnlyList<string> Problems)? made = null;
        foreach (var (blocks, gone) in from says in (bool[])[true, false]
                                       from gone in Gone(movable)
                                       select (_blocks with { SaysFiring = says }, gone))
        {
            CardBlock[] front = [.. _template.Front.Except(gone)];
            var side = Side(isBack: false, front);
            if (InSomeWords(blocks, some => Fitting(side, type => some.Of(front, type))) is { } marks)
            {
                var (back, problems) = Back([.. gone.Except(_template.Back)]);
                made = made is null || problems.Count == 0 ? (new Card(Drawn(side, marks), back), problems) : made;
                if (problems.Count == 0)
                {
                    break;
                }
            }
        }

        return made ?? TooSmall();
    }

    private static IEnumerable<List<CardBlock>> Gone(List<CardBlock> movable) =>
        Enumerable.Range(0, movable.Count + 1).Select(count => movable.TakeLast(count).ToList()).Concat(movable.SkipLast(1).Select(block => new List<CardBlock> { block }));

    private (Drawing? Back, IReadOnlyList<string> Problems) Back(IReadOnlyList<CardBlock> moved)
    {
        CardBlock[] all = [.. Heads.Where(head => _template.Back.Contains(head) || (moved.Count > 0 && _template.Back.Count == 0)), .. moved, .. _template.Back.Except(Heads)];
        // On a full back the drawing of the lights gives way to words, and those to the sheet that has it where all else then has room.
        var grades = all.Contains(CardBlock.LightPlaces) ? Enum.GetValues<PlacesGrade>() : [PlacesGrade.Drawn];
        for (var count = all.Length; count > 0; count--)
        {
            var kept = all.Take(count).ToArray();
            var drawn = grades.Where(grade => count == all.Length || grade != PlacesGrade.Elsewhere).Select(grade => OneBack(kept, grade, _blocks)).FirstOrDefault(drawn => drawn is not null);

            // Of several flashes the tables of all but the first give way to a word of where they are drawn.
            drawn ??= count < all.Length || _exposure.Lights.Count < 2 ? null : OneBack(kept, grades[^1], _blocks with { SaysAllPowers = false });
            if (drawn is { } back)
            {
                return (back, count == all.Length ? [] : [$"{Name}: the back of {_template.Name} has no room for {string.Join(", ", all.Skip(count).Select(Words))}."]);
            }
        }

        return (null, all.Length == 0 ? [] : [$"{Name}: {_template.Name} has no room for the back."]);
    }

    private Drawing? OneBack(IReadOnlyList<CardBlock> kept, PlacesGrade places, CardBlocks blocks)
    {
        var side = Side(isBack: true, kept);
        return InSomeWords(blocks with { IsBack = true, Places = places }, some => Fitting(side, type => some.Of(kept, type))) is { } marks ? Drawn(side, marks) : null;
    }

    // Where a flash shows in a cover is said where nothing has to leave the side for it.
    private static IReadOnlyList<Primitive>? InSomeWords(CardBlocks blocks, Func<CardBlocks, IReadOnlyList<Primitive>?> fitting) =>
        fitting(blocks) ?? (blocks.Cover is null ? null : fitting(blocks with { SaysWhatShows = false }));

    // At the largest size of type that the side has room for.
    private IReadOnlyList<Primitive>? Fitting(CardSide side, Func<CardType, IReadOnlyList<Block>> blocks) => Shares
        .Select(share => side.Stack(blocks(Type(share))))
        .Where(stack => stack.Bottom <= side.Room.Bottom)
        .Select(stack => stack.Marks)
        .FirstOrDefault();

    private CardSide Side(bool isBack, IReadOnlyList<CardBlock> blocks) => new(_template, _stamp, isBack, blocks.Contains(CardBlock.Rule));

    private CardType Type(double share) => CardType.Of(_template.Type, share);

    private Drawing Drawn(CardSide side, IReadOnlyList<Primitive> marks) =>
        side.Finish(Name, $"Starting exposure for {_exposure.Framing.Name} in the set-up {_exposure.SetUp}", marks);

    private string Name => $"{_exposure.SetUp}, {_exposure.Framing.Name}";

    private static string Words(CardBlock block) => block switch
    {
        CardBlock.LightBudget => "the light budget",
        CardBlock.LightPlaces => "where the lights stand",
        CardBlock.DistancePowers => "powers at other distances",
        CardBlock.MadeFor => "the light it is made for",
        CardBlock.LightChanges => "what to set when the light changes",
        CardBlock.SettingsCode => "the settings' code",
        _ => $"the {block.ToString().ToLowerInvariant()}",
    };

    // A card that cannot say all says nothing that could be mistaken for it.
    private (Card Card, IReadOnlyList<string> Problems) TooSmall()
    {
        var problem = $"The card {Name} does not hold its settings at {_template.Name}. Take a larger card.";
        var side = Side(isBack: false, []);
        var room = side.Room.Height - side.BelowHole;
        var caution = new Caution(problem, "Too small a card", TypeScale.Smallest);
        var marks = caution.Fit(side.Room.Width, room).Marks;
        return (new Card(Drawn(side, [.. marks.Select(mark => mark.Under(Similarity.Shift(side.Room.Left, side.BelowHole)))])), [problem]);
    }
}
