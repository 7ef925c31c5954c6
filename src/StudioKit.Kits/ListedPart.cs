using StudioKit.Physics;

namespace StudioKit.Kits;

/// <summary>A part that a kit can name instead of describing it.</summary>
/// <param name="Kind">Folder of the parts library, e.g. <c>pipes</c>.</param>
/// <param name="Name">Name to write into the kit.</param>
/// <param name="Title">What it is, in words; its name where the part says no more.</param>
/// <param name="Source">Where its figures come from; empty where the part does not say.</param>
/// <param name="Figures">Its figures, in the order of its file.</param>
public sealed record ListedPart(string Kind, string Name, string Title, string Source, ValueList<PartFigure> Figures)
{
    /// <summary>Whether a word stands in its kind, its name, its title or its source, in whatever case.</summary>
    /// <param name="word">The word.</param>
    /// <exception cref="ArgumentNullException">There is no word.</exception>
    public bool Mentions(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return new[] { Kind, Name, Title, Source }.Any(text => text.Contains(word.Trim(), StringComparison.OrdinalIgnoreCase));
    }
}
