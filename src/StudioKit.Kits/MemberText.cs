using System.Text;

namespace StudioKit.Kits;

/// <summary>Names of enumeration members as kit files spell them.</summary>
public static class MemberText
{
    /// <summary>Turns <c>WhiteBackground</c> into <c>white-background</c>.</summary>
    /// <param name="member">A member of an enumeration.</param>
    public static string Of(Enum member)
    {
        ArgumentNullException.ThrowIfNull(member);
        return Hyphenated(member.ToString());
    }

    /// <summary>Turns <c>WhiteBackground</c> into <c>white-background</c>.</summary>
    /// <param name="name">A member's name.</param>
    public static string Hyphenated(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var word = new StringBuilder(name.Length + 4);
        foreach (var letter in name)
        {
            if (char.IsAsciiLetterUpper(letter) && word.Length > 0)
            {
                word.Append('-');
            }

            word.Append(char.ToLowerInvariant(letter));
        }

        return word.ToString();
    }
}
