using System.Globalization;

namespace StudioKit.Physics.Light.Lobes;

/// <summary>Numbers of a photometric file's text, one after another, with the line each stands on.</summary>
internal sealed class IesTokens(string text)
{
    private static readonly char[] Separators = [' ', '\t', ',', '\r'];

    private readonly string[] _lines = text.Split('\n');
    private readonly Queue<string> _words = new();
    private int _next;

    /// <summary>Skips keywords up to the TILT line and gives what it says.</summary>
    public string FindTilt()
    {
        while (_next < _lines.Length)
        {
            var line = _lines[_next++].Trim();
            if (line.StartsWith("TILT=", StringComparison.OrdinalIgnoreCase))
            {
                return line["TILT=".Length..].Trim();
            }
        }

        throw new IesFormatException(_lines.Length, "There is no TILT= line: this is not an LM-63 text.");
    }

    public double Next(string name)
    {
        while (_words.Count == 0)
        {
            if (_next >= _lines.Length)
            {
                throw new IesFormatException(_lines.Length, $"The text ends where a {name} should stand.");
            }

            foreach (var word in _lines[_next++].Split(Separators, StringSplitOptions.RemoveEmptyEntries))
            {
                _words.Enqueue(word);
            }
        }

        return Number(_words.Dequeue(), name);
    }

    public int Count(string name, int most)
    {
        var value = Next(name);
        Require(value >= 1 && value <= most && value == Math.Floor(value), string.Create(
            CultureInfo.InvariantCulture, $"The {name} must be a whole number from 1 to {most}."));
        return (int)value;
    }

    public void Expect(double expected, string name, string reason) =>
        Require(Next(name) == expected, $"The {name} is another one: {reason}.");

    public void Require(bool condition, string sentence)
    {
        if (!condition)
        {
            throw new IesFormatException(_next, sentence);
        }
    }

    private double Number(string word, string name) =>
        double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? value
            : throw new IesFormatException(_next, $"'{(word.Length > 20 ? word[..20] : word)}' is not a number; a {name} should stand here.");
}
