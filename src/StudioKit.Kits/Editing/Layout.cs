using StudioKit.Kits.Text;
using StudioKit.Kits.Yaml;
using StudioKit.Physics;

namespace StudioKit.Kits.Editing;

/// <summary>Where in a text its values, comments and lines stand.</summary>
internal sealed class Layout
{
    private const string File = "kit.yaml";
    private readonly Lazy<int[]> _comments;

    public Layout(string text)
    {
        Text = text;
        Lines = new LineMap(text);
        var faults = new DiagnosticList(File);
        Root = TextDecoder.Check(new SourceText(File, TextDecoder.Plain(text)), faults) is { } source ? YamlTree.Read(source, faults) : null;
        Faults = faults.InOrder();
        _comments = new(() => CommentFinder.Find(this));
    }

    public string Text { get; }

    public LineMap Lines { get; }

    /// <summary>The tree; none where the text is empty or cannot be read.</summary>
    public YamlNode? Root { get; }

    /// <summary>What is wrong with the text as YAML.</summary>
    public ValueList<Diagnostic> Faults { get; }

    /// <summary>Whether there is nothing in it but comments.</summary>
    public bool IsEmpty => Root is null && Faults is [{ Code: DiagnosticCodes.Empty }];

    public int Start(YamlNode node) => Lines.Offset(node.Line, node.Column);

    /// <summary>Just behind a node's last character; a block value's line end is not part of it.</summary>
    public int End(YamlNode node)
    {
        var (start, end) = (Start(node), Lines.Offset(node.End.Line, node.End.Column));
        return node is ScalarNode && IsBlockScalar(start) || node is not ScalarNode ? start + Text.AsSpan(start, Math.Max(0, end - start)).TrimEnd().Length : Math.Max(start, end);
    }

    /// <summary>Whether nothing is written where the node would stand.</summary>
    public static bool IsAbsent(YamlNode node) => node is ScalarNode { IsQuoted: false, Text: "" };

    /// <summary>Whether a value is written as a block of lines after <c>|</c> or <c>&gt;</c>.</summary>
    public bool IsBlockScalar(int start) => start < Text.Length && Text[start] is '|' or '>';

    /// <summary>Whether an anchor or a tag stands before it.</summary>
    public bool IsMarked(YamlNode node) => !IsAbsent(node) && Start(node) < Text.Length && Text[Start(node)] is '&' or '!';

    /// <summary>Behind the colon of a pair; none where it has no colon.</summary>
    public int? Colon(MapPair pair)
    {
        var at = End(pair.Key);
        while (at < Text.Length && Text[at] is ' ' or '\t')
        {
            at++;
        }

        return at < Text.Length && Text[at] == ':' ? at + 1 : null;
    }

    /// <summary>Just behind a pair.</summary>
    public int End(MapPair pair) => IsAbsent(pair.Value) ? Colon(pair) ?? End(pair.Key) : End(pair.Value);

    /// <summary>The hyphen of an entry of a list without brackets.</summary>
    public int? Dash(ListNode list, int place)
    {
        if (place == 0)
        {
            return Start(list);
        }

        for (var line = Lines.LineOf(End(list.Items[place - 1])) + 1; line <= Lines.LineOf(Start(list.Items[place])); line++)
        {
            if (Lines.Indent(line) == list.Column - 1 && !Lines.IsBlank(line) && Text[Lines.Start(line) + Lines.Indent(line)] == '-')
            {
                return Lines.Start(line) + Lines.Indent(line);
            }
        }

        return null;
    }

    /// <summary>Whether nothing but blanks stands before a place on its line.</summary>
    public bool IsFirst(int offset)
    {
        var line = Lines.LineOf(offset);
        return Lines.Start(line) + Lines.Indent(line) == offset;
    }

    /// <summary>Where the comment of a line begins; none where it has none.</summary>
    public int? Comment(int line) => _comments.Value[line] is >= 0 and var at ? at : null;

    /// <summary>Whether a line holds a comment and nothing else.</summary>
    public bool IsComment(int line) => Comment(line) is { } at && IsFirst(at);

    /// <summary>Every comment, in order.</summary>
    public IEnumerable<string> Comments() => Enumerable.Range(0, Lines.Count).Where(line => Comment(line) is not null).Select(line => Text[Comment(line)!.Value..Lines.End(line)].TrimEnd());
}
