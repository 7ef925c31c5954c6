namespace StudioKit.Kits.Description;

/// <summary>An entry that holds a section.</summary>
internal interface IHasSection
{
    /// <summary>The section it holds.</summary>
    public ISection Inner { get; }
}
