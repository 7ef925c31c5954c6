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
/// What must be seen first never leaves the front. Where the front is too full even at the least sizes of type, its last blocks move to the back, and what the back has no
/// room for to further cards of the same number.
/// </remarks>
internal sealed class ExposureCard
{
    private static readonly double[] Shares = [1, 0.92, 0.84, 0.76, 0.68, 0.6, 0.52];

    // These stay on the front, the flashes where there is any room for them, and come first on a back made of moved blocks alone.
    private static readonly CardBlock[] Heads = [CardBlock.SetUp, CardBlock.Framing];
    private static readonly CardBlock[] Fixed = [.. Heads, CardBlock.Settings, CardBlock.Flashes];

    // One looks for these at the same place of every card.
    private static readonly CardBlock[] InTheirPlace = [.. Heads, CardBlock.Rule, CardBlock.Patches, CardBlock.SettingsCode, CardBlock.LightPlaces];

    private readonly CardTemplate _template;
    private readonly Stamp _stamp;
    private readonly ExposurePlan _exposure;
    private readonly CardBlocks _blocks;
    private readonly CardTab? _tab;

    private ExposureCard(CardBlocks blocks, CardTemplate template, CardTab? tab) => (_blocks, _exposure, _template, _stamp, _tab) = (blocks, blocks.Exposure, template, blocks.Stamp, tab);

    public static (Card Card, IReadOnlyList<Card> More, IReadOnlyList<string> Problems) Make(
        ExposurePlan exposure, CardAdvice advice, CardTemplate template, Stamp stamp, CardPlace place, CardTab? tab = null, IReadOnlyList<FeaturePlan>? features = null, CoverPlan? cover = null, IReadOnlyList<LightStandPlan>? stands = null,
        UprightLightPlan? upright = null)
    {
        var card = new ExposureCard(new CardBlocks(exposure, advice, place, stamp) { Features = features ?? [], Cover = cover, Stands = stands ?? [], Upright = upright }, template, tab);
        return exposure.IsUsable ? card.Settings() : card.Impossible();
    }

    private (Card Card, IReadOnlyList<Card> More, IReadOnlyList<string> Problems) Impossible()
    {
        var side = Side(isBack: false, []);
        for (var changes = _blocks.Advice.Mending.Count; changes >= 0; changes--)
        {
            if (Fitting(side, type => _blocks.Impossible(type, changes)) is { } marks)
            {
                return (new Card(Drawn(side, marks)), [], []);
            }
        }

        return TooSmall();
    }

    private (Card Card, IReadOnlyList<Card> More, IReadOnlyList<string> Problems) Settings()
    {
        var movable = _template.Front.Where(block => !Fixed.Contains(block) && block != CardBlock.Rule).ToList();

        // What fires each flash is set once for the session: a front that is full without it leaves it to the session plan.
        var whole = Side(isBack: false, _template.Front);
        if (_exposure.Lights.Any(light => light.FiredBy is not null) && Fitting(whole, type => _blocks.Of(_template.Front, type)) is null
            && Fitting(whole, type => (_blocks with { SaysFiring = false }).Of(_template.Front, type)) is { } without)
        {
            var (back, left) = Back([]);
            return Whole(Drawn(whole, without), back, left);
        }

        // The last blocks move to the back until the front has room; where the back then has none, one of the others instead, and what fires each flash stays with the session plan.
        (Drawing Front, Drawing? Back, IReadOnlyList<CardBlock> Left)? made = null;
        foreach (var (blocks, gone) in from says in (bool[])[true, false]
                                       from gone in Gone(movable)
                                       select (_blocks with { SaysFiring = says }, gone))
        {
            CardBlock[] front = [.. _template.Front.Except(gone)];
            var side = Side(isBack: false, front);
            if (InSomeWords(blocks, some => Fitting(side, type => some.Of(front, type))) is { } marks)
            {
                var (back, left) = Back([.. gone.Except(_template.Back)]);
                made = made is null || left.Count == 0 ? (Drawn(side, marks), back, left) : made;
                if (left.Count == 0 || gone.Contains(CardBlock.Flashes))
                {
                    break;
                }
            }
        }

        return made is { Left.Count: > 0 } && Exchanged(movable) is var (changed, behind) ? Whole(changed, behind, [])
            : made is var (first, second, rest) ? Whole(first, second, rest)
            : TooSmall();
    }

    // Before a further card is begun, one block of the back takes the place of what had to leave the front: a long table leaves room there.
    private (Drawing Front, Drawing? Back)? Exchanged(List<CardBlock> movable)
    {
        foreach (var (gone, forward) in from gone in Gone(movable)
                                        where gone.Count > 0 && !gone.Contains(CardBlock.Flashes)
                                        from forward in _template.Back.Except([.. gone, .. InTheirPlace])
                                        select (gone, forward))
        {
            CardBlock[] front = [.. _template.Front.Except(gone), forward];
            var side = Side(isBack: false, front);
            if (Back([.. gone.Except(_template.Back)], forward) is (var back, { Count: 0 }) && InSomeWords(_blocks, some => Fitting(side, type => some.Of(front, type))) is { } marks)
            {
                return (Drawn(side, marks), back);
            }
        }

        return null;
    }

    // What neither side has room for goes onto further cards of the same number: nothing is left out.
    private (Card Card, IReadOnlyList<Card> More, IReadOnlyList<string> Problems) Whole(Drawing front, Drawing? back, IReadOnlyList<CardBlock> left)
    {
        var (more, problems) = (new List<Card>(), new List<string>());
        var blocks = _blocks with { IsBack = true, Place = _blocks.Place with { IsContinued = true } };
        while (left.Count > 0)
        {
            var (one, afterOne) = Filled(isBack: false, blocks, left);
            var (other, afterOther) = one is null || afterOne.Count == 0 ? (null, afterOne) : Filled(isBack: true, blocks, afterOne);
            if (one is null)
            {
                var flowed = Flowed(blocks, left[0]);
                more.AddRange(flowed.Chunk(2).Select(sides => new Card(sides[0], sides.ElementAtOrDefault(1))));
                problems.AddRange(flowed.Count > 0 ? [] : [$"{Name}: {_template.Name} has no room for {Words(left[0])}."]);
                left = [.. left.Skip(1)];
                continue;
            }

            more.Add(new Card(one, other));
            left = afterOther;
        }

        return (new Card(front, back), more, problems);
    }

    // A table that is taller than a side goes on over the next.
    private List<Drawing> Flowed(CardBlocks blocks, CardBlock name)
    {
        var (type, sides) = (Type(Shares[^1]), new List<Drawing>());
        for (Block? rest = blocks.Split(name, type); rest is not null;)
        {
            var side = Side(isBack: sides.Count % 2 == 1, Heads);
            var (bottom, head) = side.Stack(blocks.Of(Heads, type));
            var top = Math.Max(bottom, side.BelowHole) + 1;
            var fit = rest.Fit(side.Room.Width, side.Room.Bottom - top);
            if (fit.Problem is not null)
            {
                return [];
            }

            sides.Add(Drawn(side, [.. head, .. fit.Marks.Under(Similarity.Shift(side.Room.Left, top))]));
            rest = fit.Rest;
        }

        return sides;
    }

    // As many of the blocks as a side holds.
    private (Drawing? Side, IReadOnlyList<CardBlock> Left) Filled(bool isBack, CardBlocks blocks, IReadOnlyList<CardBlock> left)
    {
        for (var count = left.Count; count > 0; count--)
        {
            CardBlock[] kept = [.. Heads, .. left.Take(count)];
            var side = Side(isBack, kept);
            if (Fitting(side, type => blocks.Of(kept, type)) is { } marks)
            {
                return (Drawn(side, marks), [.. left.Skip(count)]);
            }
        }

        return (null, left);
    }

    private static IEnumerable<List<CardBlock>> Gone(List<CardBlock> movable) =>
        Enumerable.Range(0, movable.Count + 1).Select(count => movable.TakeLast(count).ToList()).Concat(movable.SkipLast(1).Select(block => new List<CardBlock> { block })).Append([CardBlock.Flashes, .. movable]);

    private (Drawing? Back, IReadOnlyList<CardBlock> Left) Back(IReadOnlyList<CardBlock> moved, CardBlock? forward = null)
    {
        CardBlock[] all = [.. Heads.Where(head => _template.Back.Contains(head) || (moved.Count > 0 && _template.Back.Count == 0)), .. moved, .. _template.Back.Except(Heads).Where(block => block != forward)];
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
                return (back, [.. all.Skip(count)]);
            }
        }

        return (null, [.. all.Except(Heads)]);
    }

    private Drawing? OneBack(IReadOnlyList<CardBlock> kept, PlacesGrade places, CardBlocks blocks)
    {
        var side = Side(isBack: true, kept);
        return InSomeWords(blocks with { IsBack = true, Places = places }, some => Fitting(side, type => some.Of(kept, type))) is { } marks ? Drawn(side, marks) : null;
    }

    // Where a flash shows in a cover is said where nothing has to leave the side for it.
    private static DrawnAnew? InSomeWords(CardBlocks blocks, Func<CardBlocks, DrawnAnew?> fitting) =>
        fitting(blocks) ?? (blocks.Cover is null ? null : fitting(blocks with { SaysWhatShows = false }));

    // At the largest size of type that the side has room for.
    private DrawnAnew? Fitting(CardSide side, Func<CardType, IReadOnlyList<Block>> blocks)
    {
        // What does not fit at the least size fits at none; between them the largest that fits is found by halving.
        var (low, high) = (0, Shares.Length - 1);
        if (!FitsAt(high))
        {
            return null;
        }

        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = FitsAt(middle) ? (low, middle) : (middle + 1, high);
        }

        return new DrawnAnew(() => At(high).Marks);

        bool FitsAt(int share) => side.Holds(At(share).Bottom);

        (double Bottom, IReadOnlyList<Primitive> Marks) At(int share) => side.Stack(blocks(Type(Shares[share])));
    }

    private CardSide Side(bool isBack, IReadOnlyList<CardBlock> blocks) => new(_template, _stamp, isBack, blocks.Contains(CardBlock.Rule)) { Tab = _tab };

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
    private (Card Card, IReadOnlyList<Card> More, IReadOnlyList<string> Problems) TooSmall()
    {
        var problem = $"The card {Name} does not hold its settings at {_template.Name}. Take a larger card.";
        var side = Side(isBack: false, []);
        var room = side.Room.Height - side.BelowHole;
        var caution = new Caution(problem, "Too small a card", TypeScale.Smallest);
        var marks = caution.Fit(side.Room.Width, room).Marks;
        return (new Card(Drawn(side, [.. marks.Select(mark => mark.Under(Similarity.Shift(side.Room.Left, side.BelowHole)))])), [], [problem]);
    }
}
