namespace StudioKit.Kits.Completing;

/// <summary>Looks at one line of YAML that may be broken.</summary>
internal static class LooseLine
{
    /// <summary>The colon that ends a key which begins at a place; none where none does before the end.</summary>
    public static int? Colon(string text, int start, int end)
    {
        var at = start;
        if (at < end && text[at] is '"' or '\'')
        {
            at = Quoted(text, at, end);
        }

        for (; at < end; at++)
        {
            if (text[at] == ':' && (at + 1 >= end || text[at + 1] is ' ' or '\t'))
            {
                return at;
            }

            if (IsComment(text, at, start) || text[at] is '{' or '[')
            {
                return null;
            }
        }

        return null;
    }

    /// <summary>Just behind the quotation mark that closes a value; the end where it is not closed.</summary>
    public static int Quoted(string text, int start, int end)
    {
        for (var at = start + 1; at < end; at++)
        {
            if (text[at] == '\\' && text[start] == '"')
            {
                at++;
            }
            else if (text[at] == text[start])
            {
                return at + 1;
            }
        }

        return end;
    }

    /// <summary>Where the value that begins at a place ends: before a comment, without the blanks around.</summary>
    public static int ValueEnd(string text, int start, int end)
    {
        var at = start < end && text[start] is '"' or '\'' ? Quoted(text, start, end) : start;
        while (at < end && !IsComment(text, at, start))
        {
            at++;
        }

        return start + text.AsSpan(start, Math.Max(0, at - start)).TrimEnd().Length;
    }

    /// <summary>Whether a comment begins at a place of a stretch.</summary>
    public static bool IsComment(string text, int at, int start) => text[at] == '#' && (at == start || text[at - 1] is ' ' or '\t' or '\n' or '\r');

    /// <summary>Whether a comment begins in a stretch, outside quotation marks.</summary>
    public static bool HoldsComment(string text, int start, int end)
    {
        for (var at = start; at < end; at++)
        {
            if (text[at] is '"' or '\'' && (at == start || text[at - 1] is ' ' or '[' or '{' or ','))
            {
                at = Quoted(text, at, end) - 1;
            }
            else if (IsComment(text, at, start))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a hyphen that begins an entry stands at a place.</summary>
    public static bool IsDash(string text, int at, int end) => at < end && text[at] == '-' && (at + 1 >= end || text[at + 1] is ' ' or '\t');

    /// <summary>The first place from a start that is no blank.</summary>
    public static int Skip(string text, int start, int end)
    {
        while (start < end && text[start] is ' ' or '\t')
        {
            start++;
        }

        return start;
    }

    /// <summary>A value without its quotation marks.</summary>
    public static string Plain(ReadOnlySpan<char> value) => value.Trim().Trim("\"'").Trim().ToString();
}
