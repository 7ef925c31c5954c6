using StudioKit.Kits.Description;
using StudioKit.Kits.Editing;
using YamlDotNet.RepresentationModel;

namespace StudioKit.Kits.Tests.Editing;

/// <summary>A change of a kit drawn by chance, made to its text and, the other way, to the YAML library's document.</summary>
internal sealed record RandomEdit(string Kind, string Path, KitEditResult Result, Func<string> Expected)
{
    private static readonly string[] Words = ["reed 7", "#1: moth", "*", "yes", "12", "f/8", "3 kg", "1:3", "opal, white", "a \"b\" c\\d", "- x", "½ in", "{", "] [", "it's", "null", "? x", "🦋", "x: ", "key:"];

    /// <summary>Draws one; it may be refused.</summary>
    public static RandomEdit Of(KitText text, Random random)
    {
        var other = new OtherWay(text.Text);
        var all = other.All().ToArray();
        var (path, node) = all[random.Next(all.Length)];
        var lists = all.Where(found => found.Node is YamlSequenceNode { Children.Count: > 0 }).ToArray();
        return random.Next(10) switch
        {
            0 => Set(text, other, path, Words[random.Next(Words.Length)]),
            < 4 when all.Where(found => found.Node is YamlScalarNode).ToArray() is { Length: > 0 } scalars => Set(text, other, scalars[random.Next(scalars.Length)].Path, Words[random.Next(Words.Length)]),
            < 6 => Add(text, other, random),
            6 when lists.Length > 0 => Insert(text, other, lists[random.Next(lists.Length)].Path, random),
            7 when lists.Length > 0 => Move(text, other, lists[random.Next(lists.Length)].Path, random),
            _ => Remove(text, other, path),
        };
    }

    private static RandomEdit Set(KitText text, OtherWay other, string path, string value)
    {
        other.Set(path, Quoted(value));
        return new RandomEdit("set", path, text.Set(path, value), other.Written);
    }

    private static RandomEdit Add(KitText text, OtherWay other, Random random)
    {
        var absent = Absent("", other.Root, KitSection.Kit).ToArray();
        var (path, facts) = absent[random.Next(absent.Length)];
        var value = facts.Kind?.Example ?? "opal-acrylic-3";
        if (facts.Inner is { } inner)
        {
            var values = inner.Facts.Where(key => key.Kind is not null).Take(2).Select(key => (key.Key, key.Kind!.Example)).ToArray();
            YamlNode section = new YamlMappingNode(values.Select(pair => KeyValuePair.Create<YamlNode, YamlNode>(new YamlScalarNode(pair.Key), Quoted(pair.Example))));
            section = facts.IsList ? new YamlSequenceNode(section) : section;
            other.Set(path, section);
            return new RandomEdit("add", path, text.Set(path, OtherWay.Value(section)), other.Written);
        }

        other.Set(path, Quoted(value));
        return new RandomEdit("add", path, text.Set(path, value), other.Written);
    }

    private static RandomEdit Insert(KitText text, OtherWay other, string path, Random random)
    {
        var list = (YamlSequenceNode)other.Find(path);
        var copied = list.Children[random.Next(list.Children.Count)];
        var place = random.Next(list.Children.Count + 1);
        var result = text.Insert(path, place, OtherWay.Value(copied));
        other.Insert(path, place, copied);
        return new RandomEdit("insert", FormattableString.Invariant($"{path}[{place}]"), result, other.Written);
    }

    private static RandomEdit Move(KitText text, OtherWay other, string path, Random random)
    {
        var list = (YamlSequenceNode)other.Find(path);
        var (from, to) = (random.Next(list.Children.Count), random.Next(list.Children.Count));
        var moved = list.Children[from];
        list.Children.RemoveAt(from);
        list.Children.Insert(to, moved);
        var entry = FormattableString.Invariant($"{path}[{from}]");
        return new RandomEdit("move", entry, text.Move(entry, to), other.Written);
    }

    private static RandomEdit Remove(KitText text, OtherWay other, string path)
    {
        other.Remove(path);
        return new RandomEdit("remove", path, text.Remove(path), other.Written);
    }

    private static IEnumerable<(string Path, KeyFacts Facts)> Absent(string path, YamlNode node, ISection section) => node switch
    {
        YamlMappingNode map => section.Facts.SelectMany(facts =>
        {
            var place = path.Length == 0 ? facts.Key : $"{path}.{facts.Key}";
            return map.Children.TryGetValue(new YamlScalarNode(facts.Key), out var found)
                ? facts.Inner is null ? [] : Absent(place, found, facts.Inner)
                : [(place, facts)];
        }),
        YamlSequenceNode list => list.SelectMany((item, at) => Absent(FormattableString.Invariant($"{path}[{at}]"), item, section)),
        _ => [],
    };

    private static YamlScalarNode Quoted(string value) => new(value.Trim()) { Style = YamlDotNet.Core.ScalarStyle.DoubleQuoted };
}
