using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>A change that was asked for at a place of a text.</summary>
internal sealed class EditRequest
{
    private static readonly KeyStep First = new(null, 0);
    private readonly KitText _text;

    public EditRequest(KitText text, string path)
    {
        _text = text;
        Path = path;
        if (KeyPath.Read(path) is { Steps.Count: > 0 } steps)
        {
            Steps = steps.Steps;
            Way = text.Layout.Root is null ? null : Way.To(steps, text.Layout);
        }

        // The only value of a list may stand alone: then it is its own first entry.
        if (Way is { Last: { Node: ScalarNode { IsEmpty: false }, Facts: { IsList: true, Inner: null } }, Rest: [{ Key: null, Index: 0 }] } way)
        {
            Steps = [.. Steps!.SkipLast(1)];
            Way = way with { Rest = [] };
        }
    }

    public string Path { get; }

    /// <summary>The steps of the path; none where it is malformed.</summary>
    public IReadOnlyList<KeyStep>? Steps { get; }

    /// <summary>How far the path leads; none where the text holds no values or cannot be read.</summary>
    public Way? Way { get; }

    public Layout Layout => _text.Layout;

    public KitEditResult Refused(KitEditRefusal refusal) => new(_text, _text, TextEdit.None, refusal);

    public KitEditResult Set(KitValue value)
    {
        var wanted = Wanted(_ => value);
        if (Way is not { IsWhole: true } way)
        {
            return Made(Added(value), wanted);
        }

        return ValueTree.Same(wanted, _text.Values()) ? new KitEditResult(_text, _text, TextEdit.None, null)
            : (way.Last.Node, value) switch
            {
                (ListNode { Items.Count: > 0 } list, KitValue.List { Items.Count: > 0 } to) => Stepwise.List(_text, Path, list.Items.Count, to),
                (MapNode { Pairs.Count: > 0 } map, KitValue.Section { Entries.Count: > 0 } to) => Stepwise.Section(_text, Path, map, to),
                _ => Made(Replacing.Of(way, value), wanted),
            };
    }

    public KitEditResult Remove(bool withComments) => Way is not { IsWhole: true, Parent: not null } way
        ? Refused(EditObstacle.NoPlace(Path))
        : Made([Removing.Of(way, withComments)], Wanted(_ => null), withComments);

    public KitEditResult Insert(int place, KitValue value)
    {
        if (place < 0 || place > Count() || EditObstacle.Facts(Steps!) is not { IsList: true })
        {
            return Refused(EditObstacle.NoPlace($"{Path}[{place}]"));
        }

        var wanted = Wanted(list => new KitValue.List([.. ValueTree.AsList(list).Items.Take(place), value, .. ValueTree.AsList(list).Items.Skip(place)]));
        return Made(Way is not { IsWhole: true } way ? Added(new KitValue.List([value])) : Inserted(way, place, value), wanted);
    }
    public KitEditResult Move(int place)
    {
        if (Way is not { IsWhole: true, Parent: ListNode list } way || place < 0 || place >= list.Items.Count)
        {
            return Refused(EditObstacle.NoPlace(Path));
        }

        var moved = ValueTree.Of(way.Last.Node, Layout);
        var others = list.Items.Where((_, at) => at != way.Last.Place).Select(item => ValueTree.Of(item, Layout)).ToList();
        others.Insert(place, moved);
        return Made([Moving.Of(way, place)], ValueTree.Changed(_text.Values(), [.. Steps!.SkipLast(1)], _ => new KitValue.List([.. others])));
    }

    private int Count() => Way is not { IsWhole: true } way ? 0 : way.Last.Node switch
    {
        ListNode list => list.Items.Count,
        ScalarNode { IsEmpty: false } => 1,
        _ => 0,
    };

    private static IEnumerable<TextEdit?> Inserted(Way way, int place, KitValue value) => way.Last.Node switch
    {
        ListNode => Enumerable.Repeat(Inserting.Of(way, place, value), 1),
        ScalarNode { IsEmpty: false } single => Replacing.Of(way, new KitValue.List(place == 0 ? [value, KitValue.Of(single.Text)] : [KitValue.Of(single.Text), value])),
        _ => Replacing.Of(way, new KitValue.List([value])),
    };

    private KitValue Wanted(Func<KitValue?, KitValue?> change) => ValueTree.Changed(_text.Values(), Steps!, change);

    // What is not there yet is written with the sections around it.
    private IEnumerable<TextEdit> Added(KitValue value)
    {
        var rest = Way?.Rest ?? Steps!;
        var inner = rest.Skip(1).Reverse().Aggregate(value, Wrapped);
        return Way switch
        {
            null => [Adding.Alone(Layout, rest[0].Key!, inner)],
            { Last.Node: MapNode } => Adding.Of(Way, rest[0].Key!, inner),
            { Last.Node: ScalarNode { IsEmpty: false } part } => Replacing.Of(Way, new KitValue.Section([new KitEntry(SectionKeys.Part, KitValue.Of(part.Text)), new KitEntry(rest[0].Key!, inner)])),
            _ => Replacing.Of(Way, Wrapped(inner, rest[0])),
        };
    }

    private static KitValue Wrapped(KitValue value, KeyStep step) => step == First ? new KitValue.List([value]) : new KitValue.Section([new KitEntry(step.Key!, value)]);

    // The first of the edits that comes to what is wanted and keeps every comment.
    private KitEditResult Made(IEnumerable<TextEdit?> edits, KitValue wanted, bool mayLoseComments = false)
    {
        foreach (var edit in edits.OfType<TextEdit>())
        {
            var after = _text.With(edit);
            if (IsSound(after.Layout) && ValueTree.Same(after.Values(), wanted) && (mayLoseComments || Layout.Comments().Order(StringComparer.Ordinal).SequenceEqual(after.Layout.Comments().Order(StringComparer.Ordinal))))
            {
                return new KitEditResult(_text, after, edit, null);
            }
        }

        return Refused(EditObstacle.WouldAlterMore(Path));
    }

    private bool IsSound(Layout after) => after.Root is null ? after.IsEmpty : after.Faults.Count <= Layout.Faults.Count || (Layout.IsEmpty && after.Faults.Count == 0);
}
