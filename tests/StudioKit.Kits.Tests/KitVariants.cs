using StudioKit.Kits.SetUps;
using StudioKit.Kits.Text;
using StudioKit.Kits.Yaml;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Structure.Frames;

namespace StudioKit.Kits.Tests;

/// <summary>A kit's text and the single changes that can be made to it.</summary>
internal sealed class KitVariants
{
    // Words of which each may stand instead of another: choices, yes and no, names of parts.
    private static readonly string[][] Choices =
    [
        ["yes", "no"], ["best", "f/8"], ["EUR", "USD"], ["left", "away"],
        .. new[] { "cameras", "cells", "fittings", "pipes", "sheets" }.Select(kind => PartsLibrary.Embedded.Names(kind).ToArray()),
        .. typeof(SetUpKind).Assembly.GetTypes().Where(type => type.IsEnum).Select(type => Array.ConvertAll(Enum.GetNames(type), MemberText.Hyphenated)),
        Array.ConvertAll(Enum.GetNames<FrameStretchers>(), MemberText.Hyphenated),
        Array.ConvertAll(Enum.GetNames<PowerStep>(), MemberText.Hyphenated),
    ];

    private readonly string _text;
    private readonly HashSet<ScalarNode> _kinds = new(ReferenceEqualityComparer.Instance);

    public KitVariants(string text)
    {
        _text = text;
        var root = YamlTree.Read(new SourceText("kit.yaml", text), new DiagnosticList("kit.yaml"))!;
        Values = [.. Scalars(root)];
    }

    /// <summary>Every single value of the kit, in the order written.</summary>
    public IReadOnlyList<ScalarNode> Values { get; }

    public static KitVariants OfDemo(string file) => new(File.ReadAllText(Path.Combine(KitFolder.Path, file)));

    /// <summary>Texts in which one value is another, whether or not they make a sound kit.</summary>
    public IEnumerable<string> Changed(ScalarNode value)
    {
        // A name is changed wherever it is used; a kind may go by the same word, and stays.
        yield return Values.Where(other => other.Text == value.Text && !_kinds.Contains(other)).Aggregate(_text, (text, name) => With(text, name, name.Text + "x"));
        // A letter alone is a group of a radio.
        if (value.Text is [>= 'A' and < 'P' and var letter])
        {
            yield return With(_text, value, ((char)(letter + 1)).ToString());
        }

        foreach (var other in Digits(value.Text).Concat(Choices.Where(words => words.Contains(value.Text)).SelectMany(words => words).Where(word => word != value.Text)))
        {
            yield return With(_text, value, other);
        }
    }

    private static IEnumerable<string> Digits(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            for (var digit = '1'; digit <= '9' && char.IsAsciiDigit(text[i]); digit++)
            {
                if (digit != text[i])
                {
                    yield return $"{text[..i]}{digit}{text[(i + 1)..]}";
                }
            }
        }
    }

    private IEnumerable<ScalarNode> Scalars(YamlNode node) => node switch
    {
        ScalarNode scalar => [scalar],
        ListNode list => list.Items.SelectMany(Scalars),
        MapNode map => map.Pairs.SelectMany(Scalars),
        _ => [],
    };

    private IEnumerable<ScalarNode> Scalars(MapPair pair)
    {
        if (pair is { Key.Text: "kind", Value: ScalarNode kind })
        {
            _kinds.Add(kind);
        }

        return Scalars(pair.Value);
    }

    private static string With(string text, ScalarNode value, string other)
    {
        var lines = text.Split('\n');
        var line = lines[value.Line - 1];
        var start = value.Column - 1 + (value.IsQuoted ? 1 : 0);
        lines[value.Line - 1] = line[..start] + other + line[(start + value.Text.Length)..];
        return string.Join('\n', lines);
    }
}
