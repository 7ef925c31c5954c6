using StudioKit.Kits.Quantities;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Description;

/// <summary>What one key of a section takes, whatever record it fills.</summary>
/// <param name="Key">The key.</param>
/// <param name="Doc">What it is for, in a sentence.</param>
/// <param name="IsRequired">Whether it must be there.</param>
internal sealed record KeyFacts(string Key, string Doc, bool IsRequired)
{
    /// <summary>Kind of its single values; none where it holds sections.</summary>
    public ValueKind? Kind { get; init; }

    /// <summary>Smallest and largest value allowed.</summary>
    public ValueBounds Bounds { get; init; } = new(null, null);

    /// <summary>Plural of the things that it names, e.g. <c>flashes</c>; none where it names nothing.</summary>
    public string? RefersTo { get; init; }

    /// <summary>Kind of the files beside the kit that it names, e.g. <c>light-distributions</c>; none where it names none.</summary>
    public string? FileKind { get; init; }

    /// <summary>The section that it holds; none where it holds single values.</summary>
    public ISection? Inner { get; init; }

    /// <summary>Keys of the section that it holds, with the defaults that go where it is left out; none where it holds single values.</summary>
    public Func<IReadOnlyList<KeyFacts>>? InnerFacts { get; init; }

    /// <summary>Reads one single value, reports what is wrong with it, and tells it as we would write it; none where it cannot be read.</summary>
    public Func<YamlNode, string, ReadContext, string?>? Reading { get; init; }

    /// <summary>Whether it takes a list; of single values also one alone.</summary>
    public bool IsList { get; init; }

    /// <summary>What stands in for it where it is left out, as it would be written; none where nothing does.</summary>
    public string? Default { get; init; }
}
