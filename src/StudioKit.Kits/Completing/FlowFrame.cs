using StudioKit.Kits.Description;

namespace StudioKit.Kits.Completing;

/// <summary>A pair of brackets or braces that is open.</summary>
/// <param name="facts">What its key takes; none where nobody knows.</param>
/// <param name="section">The section that the braces are; none for brackets.</param>
/// <param name="isMap">Whether it is braces.</param>
/// <param name="start">Behind the bracket.</param>
internal sealed class FlowFrame(KeyFacts? facts, ISection? section, bool isMap, int start)
{
    public KeyFacts? Facts => facts;

    public ISection? Section => section;

    public bool IsMap => isMap;

    /// <summary>Keys seen between the braces, with where they begin.</summary>
    public List<(int Start, string Key)> Keys { get; } = [];

    /// <summary>The key whose value is being read; none before its colon.</summary>
    public string? Key { get; set; }

    /// <summary>Where the key or value being read begins.</summary>
    public int Start { get; set; } = start;
}
