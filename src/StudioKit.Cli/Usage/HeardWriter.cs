using System.Text;

namespace StudioKit.Cli.Usage;

/// <summary>Passes on what is written for people and keeps its sentences, for a program that reads JSON and sees no error stream.</summary>
internal sealed class HeardWriter(TextWriter inner) : TextWriter
{
    private const int MostSentences = 100;
    private readonly StringBuilder _line = new();
    private readonly List<string> _sentences = [];

    public override Encoding Encoding => inner.Encoding;

    /// <summary>Every whole line so far that says something, at most a hundred.</summary>
    public IReadOnlyList<string> Sentences => _sentences;

    public override void Write(char value)
    {
        inner.Write(value);
        Hear(value);
    }

    public override void Write(string? value)
    {
        inner.Write(value);
        foreach (var letter in value ?? "")
        {
            Hear(letter);
        }
    }

    public override void WriteLine(string? value) => Write(value + Environment.NewLine);

    public override void Flush() => inner.Flush();

    private void Hear(char letter)
    {
        if (letter != '\n')
        {
            _line.Append(letter);
            return;
        }

        var sentence = _line.ToString().Trim();
        _line.Clear();
        if (sentence.Length > 0 && _sentences.Count < MostSentences && !sentence.Any(char.IsControl))
        {
            _sentences.Add(sentence);
        }
    }
}
