using StudioKit.Physics;

namespace StudioKit.Planning.Exploring;

/// <summary>Something that a kit leaves open.</summary>
/// <param name="Name">Its name in results.</param>
/// <param name="Options">Ways to settle it, at least two; one of them comes to the kit as it is written.</param>
public sealed record DesignChoice(string Name, ValueList<DesignOption> Options)
{
    /// <summary>Place of the option that comes to the kit as it is written [1].</summary>
    public int Own => Options.Select(option => option.IsOwn).ToList().IndexOf(true);
}
