using YamlDotNet.Core;
using YamlDotNet.Core.Events;
using YamlDotNet.RepresentationModel;

namespace StudioKit.Field.Calibration;

/// <summary>Reads a small YAML file of which nothing is known, at no more cost than a small file is worth.</summary>
internal static class BoundedYaml
{
    /// <summary>Most characters of a correction file [1].</summary>
    public const int MostCharacters = 64 * 1024;

    private const int MostDepth = 6;
    private const int MostEvents = 4000;

    /// <summary>The one mapping of the file.</summary>
    /// <exception cref="FormatException">The file is larger, deeper or otherwise made than ours are.</exception>
    /// <exception cref="YamlException">It is no YAML.</exception>
    public static YamlMappingNode Load(string text)
    {
        if (text.Length > MostCharacters)
        {
            throw new FormatException(FormattableString.Invariant($"it is longer than {MostCharacters / 1024} kB."));
        }

        // The tree is built by calls within calls, so its depth is looked at before.
        Walk(text);
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        return stream.Documents.Count == 1 && stream.Documents[0].RootNode is YamlMappingNode root
            ? root
            : throw new FormatException("it holds no list of corrections.");
    }

    private static void Walk(string text)
    {
        var (parser, depth, events) = (new Parser(new StringReader(text)), 0, 0);
        while (parser.MoveNext())
        {
            depth += parser.Current!.NestingIncrease;
            if (depth > MostDepth || ++events > MostEvents)
            {
                throw new FormatException("it is nested deeper, or holds more, than a correction file does.");
            }

            if (parser.Current is AnchorAlias or NodeEvent { Anchor.IsEmpty: false })
            {
                throw new FormatException("it uses anchors or aliases, which a correction file has no need of.");
            }
        }
    }
}
