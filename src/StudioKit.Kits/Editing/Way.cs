using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>How far a path leads in a text: the nodes on the way, and the steps that are not there yet.</summary>
internal sealed record Way(Layout Layout, IReadOnlyList<Link> Links, IReadOnlyList<KeyStep> Rest)
{
    /// <summary>The last node that is there.</summary>
    public Link Last => Links[^1];

    /// <summary>Its parent; none at the root.</summary>
    public YamlNode? Parent => Links.Count > 1 ? Links[^2].Node : null;

    /// <summary>Whether the whole path is there.</summary>
    public bool IsWhole => Rest.Count == 0;

    /// <summary>Whether the last node stands between brackets or braces of another.</summary>
    public bool IsInFlow => Links.SkipLast(1).Any(link => link.Node is MapNode { IsFlow: true } or ListNode { IsFlow: true });

    /// <summary>The pair that the last node is the value of; none where it is none's.</summary>
    public MapPair? Pair => (Parent as MapNode)?.Pairs[Last.Place];

    /// <summary>Just behind the colon or hyphen before the last node; its own start where there is none.</summary>
    public int? Slot => Parent switch
    {
        MapNode => Layout.Colon(Pair!),
        ListNode { IsFlow: false } list => Layout.Dash(list, Last.Place) + 1,
        _ => Layout.Start(Last.Node),
    };

    public static Way To(KeyPath path, Layout layout)
    {
        var links = new List<Link> { new(layout.Root!, 0, null, KitSection.Kit) };
        var taken = 0;
        foreach (var step in path.Steps)
        {
            if (Next(links[^1], step) is not { } next)
            {
                break;
            }

            links.Add(next);
            taken++;
        }

        return new Way(layout, links, [.. path.Steps.Skip(taken)]);
    }

    private static Link? Next(Link here, KeyStep step)
    {
        if (step.Key is null)
        {
            return here.Node is ListNode list && step.Index < list.Items.Count ? here with { Node = list.Items[step.Index], Place = step.Index } : null;
        }

        var place = (here.Node as MapNode)?.Pairs.ToList().FindIndex(pair => pair.Key.Text == step.Key) ?? -1;
        var facts = here.Section?.Find(step.Key);
        return place < 0 ? null : new Link(((MapNode)here.Node).Pairs[place].Value, place, facts, facts?.Inner);
    }
}
