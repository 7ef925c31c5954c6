namespace StudioKit.Kits.Quantities;

/// <summary>One kind of value, whatever type it is read into: how it is bounded and described to people and editors.</summary>
/// <param name="Noun">With its article, for messages and documentation.</param>
/// <param name="Example">A value as people write it.</param>
internal abstract record ValueKind(string Noun, string Example)
{
    /// <summary>Makes a regular expression for editors, without anchors; none where any text may stand.</summary>
    /// <remarks>Made on demand, as only the schema needs it and reading a kit must start at once.</remarks>
    public Func<string>? Pattern { get; init; }

    /// <summary>Every word allowed, where there is only a choice of words.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>Words that may stand in place of a value.</summary>
    public IReadOnlyList<string> AlsoWords { get; init; } = [];

    /// <summary>Makes the list of words that may stand in place of a value, where it is worth making only when it is asked for.</summary>
    public Func<IReadOnlyList<string>>? LateWords { get; init; }

    /// <summary>Type that an editor's YAML reader may see besides a string: <c>number</c>, <c>integer</c> or <c>boolean</c>.</summary>
    public string? JsonType { get; init; }

    /// <summary>Reads a bound or an uncertainty, in the unit table's units; none where bounds make no sense.</summary>
    public Func<string, Reading<double>>? ReadMeasure { get; init; }

    /// <summary>What the units of its numbers measure; none where they have none, or stand on a dial.</summary>
    public UnitDimension? Dimension { get; init; }

    /// <summary>SI value of one of the unit table's units.</summary>
    public double ToSi { get; init; } = 1;

    /// <summary>Whether <c>± x</c> may follow.</summary>
    public bool TakesUncertainty { get; init; }

    /// <summary>Whether the uncertainty may be counted in stops.</summary>
    public bool CountsLight { get; init; }

    /// <summary>Whether the value itself is counted in stops.</summary>
    public bool IsInStops { get; init; }

    /// <summary>Whether an uncertainty must be a share or in stops, as the value's own unit is ambiguous.</summary>
    public bool IsRelativeOnly { get; init; }
}
