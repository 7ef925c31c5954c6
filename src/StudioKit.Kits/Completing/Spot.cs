using StudioKit.Kits.Description;

namespace StudioKit.Kits.Completing;

/// <summary>What may stand at the place where somebody types, and what of it stands there already.</summary>
/// <param name="Text">The text.</param>
/// <param name="Position">The place.</param>
/// <param name="Start">Where the word begins that is typed.</param>
/// <param name="End">Where it ends, which may lie behind the place.</param>
internal sealed record Spot(string Text, int Position, int Start, int End)
{
    /// <summary>The section whose keys may stand here; none where none may.</summary>
    public ISection? Section { get; init; }

    /// <summary>Keys that the section has already, with where they begin; the reader may still add to it.</summary>
    public IReadOnlyCollection<(int Start, string Key)> Taken { get; init; } = [];

    /// <summary>The key whose value may stand here; none where none may.</summary>
    public KeyFacts? Value { get; init; }

    /// <summary>Kind of the parts that may be named here; none where none may.</summary>
    public string? PartKind { get; init; }

    /// <summary>Where the change begins: the word's start, or that of its line where it moves to where it belongs.</summary>
    public int From { get; init; } = Start;

    /// <summary>What comes before a candidate: blanks up to where it belongs, a hyphen.</summary>
    public string Before { get; init; } = "";

    /// <summary>Blanks before the section's keys; only outside brackets.</summary>
    public int Column { get; init; }

    /// <summary>What the text's lines end with.</summary>
    public string LineEnd { get; init; } = "\n";

    /// <summary>Whether it lies between brackets or braces.</summary>
    public bool IsFlow { get; init; }

    /// <summary>Whether a colon follows the word, so that a key that takes its place needs none.</summary>
    public bool HasColon { get; init; }

    /// <summary>The quotation mark that the value began with; a blank where it began with none.</summary>
    public char Mark { get; init; } = ' ';

    /// <summary>Names that things of the kit bear.</summary>
    public required NamesSeen Names { get; init; }

    /// <summary>What was typed before the place.</summary>
    public string Typed => Text[Start..Math.Max(Start, Position)].TrimStart();
}
