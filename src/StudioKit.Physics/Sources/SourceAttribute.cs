namespace StudioKit.Physics.Sources;

/// <summary>Says where a calculation comes from; tests and sheets read it.</summary>
/// <param name="key">Key of an entry in the bibliography.</param>
/// <param name="locator">Where in the source: section, table or equation.</param>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Property | AttributeTargets.Class | AttributeTargets.Field, AllowMultiple = true)]
public sealed class SourceAttribute(string key, string locator) : Attribute
{
    /// <summary>Key of an entry in the bibliography.</summary>
    public string Key { get; } = key;

    /// <summary>Where in the source: section, table or equation.</summary>
    public string Locator { get; } = locator;
}
