using StudioKit.Physics;

namespace StudioKit.Planning.Exploring;

/// <summary>What a choice does: the most that a change of it alone does to the kit as it is written and to each design shown.</summary>
/// <param name="Choice">The choice.</param>
/// <param name="Largest">Largest change of each measure compared, in its unit; none where nothing was to compare.</param>
/// <param name="Share">The largest of them as a share of what the measure spans over all designs that stand [1]; 0 to 1.</param>
/// <param name="Spoils">Changes of it alone after which a design does not stand or cannot be [1].</param>
/// <param name="Compared">Changes of it alone that were tried [1].</param>
public sealed record ChoiceEffect(DesignChoice Choice, ValueList<double?> Largest, double Share, int Spoils, int Compared)
{
    /// <summary>Whether it changes nothing that is compared.</summary>
    public bool IsNone => Spoils == 0 && Largest.All(change => change is null or 0);
}
