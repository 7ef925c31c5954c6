using StudioKit.Kits.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace StudioKit.Kits.Yaml;

/// <summary>Builds the tree of one file from the parser's events, and refuses what kits do without.</summary>
/// <remarks>Aliases are never followed, so a file cannot grow while it is read; depth and number of values are bounded as the events come.</remarks>
internal sealed class YamlTree
{
    private readonly SourceText _source;
    private readonly DiagnosticList _diagnostics;
    private readonly Parser _parser;
    private int _nodes;
    private bool _hasAlias;
    private bool _hasAnchor;
    private bool _isSplit;

    private YamlTree(SourceText source, DiagnosticList diagnostics)
    {
        _source = source;
        _diagnostics = diagnostics;
        _parser = new Parser(new Scanner(new StringReader(source.Text), skipComments: true));
    }

    /// <summary>Reads the one document of a file.</summary>
    /// <returns>Its root; none where the file is empty or its YAML is broken, which is then reported.</returns>
    public static YamlNode? Read(SourceText source, DiagnosticList diagnostics)
    {
        return LineShape.IsReadable(source, diagnostics) ? new YamlTree(source, diagnostics).Document() : null;
    }

    private YamlNode? Document()
    {
        try
        {
            Advance();
            Advance();
            if (_parser.Current is not DocumentStart)
            {
                return Nothing();
            }

            Advance();
            var root = Node(depth: 0);
            Advance();
            if (root is not null && _parser.Current is DocumentStart another)
            {
                Refuse(another, "A second document starts here.", "One document stands in a file: remove the '---' and what follows.");
            }

            return root is ScalarNode { IsEmpty: true } ? Nothing() : root;
        }
        catch (YamlException fault)
        {
            ReportSyntax(fault);
            return null;
        }
    }

    // Reads the node at the current event and moves on to the event after it; none where reading had to stop.
    private YamlNode? Node(int depth)
    {
        if (_parser.Current is AnchorAlias alias)
        {
            RefuseOnce(ref _hasAlias, alias, $"'*{Excerpt.Short(alias.Value.Value)}' is an alias.", "Write the values out, or name a part from the parts library.");
            Advance();
            return new RefusedNode(_source, (int)alias.Start.Line, (int)alias.Start.Column) { End = Place(alias.End) };
        }

        if (_parser.Current is not NodeEvent start)
        {
            // Seen after a stray colon: the parser ends the section where a value is due.
            var here = _parser.Current?.Start ?? Mark.Empty;
            throw new YamlException(here, here, "A value is missing.");
        }

        if (IsTooMuch(start, depth))
        {
            return null;
        }

        RefuseAnchorAndTag(start);
        return start switch
        {
            Scalar scalar => Take(scalar),
            SequenceStart list => List(list, depth),
            _ => Map((MappingStart)start, depth),
        };
    }

    private YamlNode Take(Scalar scalar)
    {
        Advance();
        var isRest = _isSplit;
        _isSplit = SplitsNumber(scalar);
        if (_isSplit && !isRest)
        {
            var whole = $"{scalar.Value},{((Scalar)_parser.Current!).Value}";
            _diagnostics.Error(
                DiagnosticCodes.UnreadableValue, _source, (int)scalar.Start.Line, (int)scalar.Start.Column, $"'{Excerpt.Short(whole)}' has a comma in its number.",
                $"Decimals take a point: '{Excerpt.Short(whole.Replace(',', '.'))}'. Between two values, put a blank behind the comma.");
        }

        var (line, column) = Place(scalar.Start);
        return isRest || _isSplit
            ? new RefusedNode(_source, line, column) { End = Place(scalar.End) }
            : new ScalarNode(_source, line, column, scalar.Value, scalar.Style != ScalarStyle.Plain) { End = Place(scalar.End) };
    }

    // Between brackets a comma ends a value, so that 1,5 is two of them, and neither looks wrong.
    private bool SplitsNumber(Scalar first) => first.Style == ScalarStyle.Plain && _parser.Current is Scalar { Style: ScalarStyle.Plain, Value.Length: > 0 } next
        && first.Value.Length > 0 && next.Start.Index == first.End.Index + 1 && char.IsAsciiDigit(first.Value[^1]) && char.IsAsciiDigit(next.Value[0]);

    private ListNode? List(SequenceStart start, int depth)
    {
        var items = new List<YamlNode>();
        var (line, column) = Place(start.Start);
        Advance();
        while (_parser.Current is not SequenceEnd)
        {
            if (Node(depth + 1) is not { } item)
            {
                return null;
            }

            items.Add(item);
        }

        var isFlow = start.Style == SequenceStyle.Flow;
        var end = isFlow || items.Count == 0 ? Behind(_parser.Current) : items[^1].End;
        Advance();
        return new ListNode(_source, line, column, items) { IsFlow = isFlow, End = end };
    }

    private MapNode? Map(MappingStart start, int depth)
    {
        var pairs = new List<MapPair>();
        var refused = new List<ScalarNode>();
        var keys = new HashSet<string>(StringComparer.Ordinal);
        var end = Place(start.End);
        Advance();
        while (_parser.Current is not MappingEnd)
        {
            if (Node(depth + 1) is not { } key || Node(depth + 1) is not { } value)
            {
                return null;
            }

            AddPair(key, value, pairs, refused, keys);
            end = value.End;
        }

        var isFlow = start.Style == MappingStyle.Flow;
        end = isFlow ? Behind(_parser.Current) : end;
        Advance();
        var (line, column) = Place(start.Start);
        return new MapNode(_source, line, column, pairs) { IsFlow = isFlow, Refused = refused, End = end };
    }

    private void AddPair(YamlNode key, YamlNode value, List<MapPair> pairs, List<ScalarNode> refused, HashSet<string> keys)
    {
        if (key is RefusedNode)
        {
            return;
        }

        if (key is not ScalarNode name)
        {
            _diagnostics.Error(DiagnosticCodes.WrongShape, key, "A key must be a single word.", null);
        }
        else if (name.Text == "<<")
        {
            refused.Add(name);
            _diagnostics.Error(
                DiagnosticCodes.RefusedFeature, name, "'<<' merges another section in.", "Write the values out, or name a part from the parts library.");
        }
        else if (!keys.Add(name.Text))
        {
            refused.Add(name);
            var first = pairs.Find(pair => pair.Key.Text == name.Text)!.Key;
            _diagnostics.Error(
                DiagnosticCodes.DuplicateKey, name, $"'{Excerpt.Short(name.Text)}' stands twice in this section.", $"It is already on line {first.Line}; keep one of them.");
        }
        else
        {
            pairs.Add(new MapPair(name, value));
        }
    }

    private bool IsTooMuch(NodeEvent start, int depth)
    {
        if (depth > KitLimits.Depth)
        {
            _diagnostics.Error(
                DiagnosticCodes.TooMuch, _source, (int)start.Start.Line, (int)start.Start.Column, "Sections are nested too deep.", $"No more than {KitLimits.Depth} levels are needed.");
        }
        else if (++_nodes > KitLimits.Nodes)
        {
            _diagnostics.Error(
                DiagnosticCodes.TooMuch, _source, (int)start.Start.Line, (int)start.Start.Column, "The file holds too many values.", $"It may hold at most {KitLimits.Nodes} keys and values.");
        }
        else
        {
            return false;
        }

        return true;
    }

    private void RefuseAnchorAndTag(NodeEvent start)
    {
        if (!start.Anchor.IsEmpty)
        {
            RefuseOnce(ref _hasAnchor, start, $"'&{Excerpt.Short(start.Anchor.Value)}' is an anchor.", "Anchors and aliases are not needed: write the values out, or name a part.");
        }

        if (!start.Tag.IsEmpty && !start.Tag.IsNonSpecific)
        {
            Refuse(start, $"'{Excerpt.Short(start.Tag.Value)}' is a tag.", "Tags are not needed: remove it.");
        }
    }

    // The parser is meant to complain by a YamlException only, but some malformed texts (a plain value that runs over lines in a '[', for one)
    // break it instead. Either way the file is at fault here, not the program.
    private void Advance()
    {
        try
        {
            _parser.MoveNext();
        }
        catch (Exception fault) when (fault is InvalidOperationException or ArgumentException or IndexOutOfRangeException or OverflowException)
        {
            var after = _parser.Current?.End ?? Mark.Empty;
            throw new YamlException(after, after, fault.Message, fault);
        }
    }

    // One of a kind is enough to say: a file of aliases would fill the screen.
    private void RefuseOnce(ref bool refused, ParsingEvent at, string message, string hint)
    {
        if (!refused)
        {
            Refuse(at, message, hint);
        }

        refused = true;
    }

    private void Refuse(ParsingEvent at, string message, string hint) =>
        _diagnostics.Error(DiagnosticCodes.RefusedFeature, _source, (int)at.Start.Line, (int)at.Start.Column, message, hint);

    // The parser lets a closing bracket end where it begins.
    private static (int Line, int Column) Behind(ParsingEvent bracket) => ((int)bracket.Start.Line, (int)bracket.Start.Column + 1);

    private static (int Line, int Column) Place(Mark mark) => ((int)mark.Line, (int)mark.Column);

    private YamlNode? Nothing()
    {
        _diagnostics.Error(DiagnosticCodes.Empty, _source, 1, 1, "The file holds no values.", null, DiagnosticHelp.StarterKit);
        return null;
    }

    private void ReportSyntax(YamlException fault)
    {
        var (line, column) = ((int)fault.Start.Line, (int)fault.Start.Column);
        while (line > 1 && _source.Line(line).Trim().Length == 0)
        {
            // A fault at the end of the file shows best on the last line that says anything.
            line--;
            column = _source.Line(line).Length + 1;
        }

        _diagnostics.Error(
            DiagnosticCodes.Syntax, _source, line, column, $"This is not well-formed YAML: {SyntaxFault.InOurWords(fault.Message)}", SyntaxFault.Hint(fault.Message, _source.Line(line)));
    }
}
