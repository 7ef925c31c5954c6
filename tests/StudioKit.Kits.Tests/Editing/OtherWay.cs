using System.Globalization;
using StudioKit.Kits.Editing;
using YamlDotNet.Core;
using YamlDotNet.Core.Tokens;
using YamlDotNet.RepresentationModel;

namespace StudioKit.Kits.Tests.Editing;

/// <summary>Another way to an edited kit, which shares nothing with the edits of the text: the YAML library's own document, changed as objects and written out anew.</summary>
internal sealed class OtherWay
{
    private readonly YamlStream _stream = [];

    public OtherWay(string text)
    {
        using var reader = new StringReader(text);
        _stream.Load(reader);
    }

    public YamlNode Root => _stream.Documents.Count == 0 ? new YamlMappingNode() : _stream.Documents[0].RootNode;

    /// <summary>Comments as the library's scanner finds them, in alphabetical order.</summary>
    public static IReadOnlyList<string> Comments(string text)
    {
        var comments = new List<string>();
        var scanner = new Scanner(new StringReader(text.ReplaceLineEndings("\n")), skipComments: false);
        while (scanner.MoveNext())
        {
            if (scanner.Current is Comment comment)
            {
                comments.Add(comment.Value.Trim());
            }
        }

        comments.Sort(StringComparer.Ordinal);
        return comments;
    }

    /// <summary>Every path of the kit with its node.</summary>
    public IEnumerable<(string Path, YamlNode Node)> All() => All("", Root);

    public void Set(string path, YamlNode value) => On(path, (map, key) => map.Children[key] = value, (list, place) => list.Children[place] = value);

    public void Remove(string path) => On(path, (map, key) => map.Children.Remove(key), (list, place) => list.Children.RemoveAt(place));

    public void Insert(string path, int place, YamlNode value) => ((YamlSequenceNode)Find(path)).Children.Insert(place, value);

    public YamlNode Find(string path) => All().First(found => found.Path == path).Node;

    public string Written()
    {
        using var writer = new StringWriter(CultureInfo.InvariantCulture);
        _stream.Save(writer, assignAnchors: false);
        return writer.ToString();
    }

    /// <summary>A node as the edits take it.</summary>
    public static KitValue Value(YamlNode node) => node switch
    {
        YamlSequenceNode list => new KitValue.List([.. list.Select(Value)]),
        YamlMappingNode map => new KitValue.Section([.. map.Select(pair => new KitEntry(((YamlScalarNode)pair.Key).Value!, Value(pair.Value)))]),
        _ => KitValue.Of(((YamlScalarNode)node).Value!),
    };

    private void On(string path, Action<YamlMappingNode, YamlScalarNode> inMap, Action<YamlSequenceNode, int> inList)
    {
        if (path.EndsWith(']'))
        {
            var at = path.LastIndexOf('[');
            inList((YamlSequenceNode)Find(path[..at]), int.Parse(path[(at + 1)..^1], CultureInfo.InvariantCulture));
            return;
        }

        var dot = path.LastIndexOf('.');
        inMap((YamlMappingNode)(dot < 0 ? Root : Find(path[..dot])), new YamlScalarNode(path[(dot + 1)..]));
    }

    private static IEnumerable<(string Path, YamlNode Node)> All(string path, YamlNode node)
    {
        var inner = node switch
        {
            YamlMappingNode map => map.SelectMany(pair => All(path.Length == 0 ? pair.Key.ToString() : $"{path}.{pair.Key}", pair.Value)),
            YamlSequenceNode list => list.SelectMany((item, at) => All(FormattableString.Invariant($"{path}[{at}]"), item)),
            _ => [],
        };
        return path.Length == 0 ? inner : inner.Prepend((path, node));
    }
}
