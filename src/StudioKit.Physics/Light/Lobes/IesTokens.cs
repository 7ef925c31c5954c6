using System.Globalization;

namespace StudioKit.Physics.Light.Lobes;

/// <summary>Numbers of a photometric file's text, one after another, with the line each stands on.</summary>
internal sealed class IesTokens(string text)
{
    private static readonly char[] Separators = [' ', '\t', ',', '\r'];

    private readonly string[] _lines = text.Split('\n');
    private readonly Queue<(string Word, int Column)> _words = new();
    private int _next;
    private int _column = 1;

    /// <summary>Skips keywords up to the TILT line and gives what it says.</summary>
    public string FindTilt()
    {
        while (_next < _lines.Length)
        {
            var line = _lines[_next++].Trim();
            if (line.StartsWith("TILT=", StringComparison.OrdinalIgnoreCase))
            {
                _column = _lines[_next - 1].IndexOf('=', StringComparison.Ordinal) + 2;
                return line["TILT=".Length..].Trim();
            }
        }

        throw new IesFormatException(1, 1, "There is no TILT= line: this is not an LM-63 text.");
    }

    public double Next(string name)
    {
        while (_words.Count == 0)
        {
            if (_next >= _lines.Length)
            {
                throw new IesFormatException(_lines.Length, _lines[^1].Length + 1, $"The text ends where a {name} should stand.");
            }

            Take(_lines[_next++]);
        }

        (var next, _column) = _words.Dequeue();
        return Number(next, name);
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
            throw new IesFormatException(_next, _column, sentence);
        }
    }

    private void Take(string line)
    {
        var at = 0;
        foreach (var word in line.Split(Separators, StringSplitOptions.RemoveEmptyEntries))
        {
            at = line.IndexOf(word, at, StringComparison.Ordinal);
            _words.Enqueue((word, at + 1));
            at += word.Length;
        }
    }

    private double Number(string word, string name) =>
        double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? value
            : throw new IesFormatException(_next, _column, $"'{(word.Length > 20 ? word[..20] : word)}' is not a number; a {name} should stand here.");
}
