using StudioKit.Kits.Exploring;

namespace StudioKit.Planning.Exploring;

/// <summary>The designs of those tried that no other beats.</summary>
/// <remarks>Which they are does not depend on the order in which they were tried.</remarks>
internal sealed class DesignFrontier(IReadOnlyList<DesignMeasure> measures)
{
    private readonly List<TriedDesign> _shown = [];

    /// <summary>The designs, those that are alike side by side.</summary>
    public IReadOnlyList<TriedDesign> Shown => _shown;

    /// <summary>Takes a good design in where no other beats it, and drops those that it beats.</summary>
    public void Add(TriedDesign design)
    {
        if (design.Verdict != DesignVerdict.Good || _shown.Exists(other => other.Figures!.Beats(design.Figures!, measures)))
        {
            return;
        }

        _shown.RemoveAll(other => design.Figures!.Beats(other.Figures!, measures));
        _shown.Add(design);
    }
}
