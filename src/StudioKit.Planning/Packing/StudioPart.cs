namespace StudioKit.Planning.Packing;

/// <summary>Parts of the studio that is built from the plan.</summary>
public enum StudioPart
{
    /// <summary>Pipes and fittings.</summary>
    Frame,

    /// <summary>The translucent sheet.</summary>
    Panel,

    /// <summary>Cloths that close the space under it.</summary>
    Skirts,
}
