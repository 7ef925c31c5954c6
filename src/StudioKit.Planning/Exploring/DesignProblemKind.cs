namespace StudioKit.Planning.Exploring;

/// <summary>What can be wrong with what a kit leaves open.</summary>
public enum DesignProblemKind
{
    /// <summary>Nothing is left open at all.</summary>
    NothingOpen,

    /// <summary>A path leads nowhere.</summary>
    NoSuchPlace,

    /// <summary>The kit's text cannot be changed so.</summary>
    CannotBeWritten,

    /// <summary>The kit cannot be read with it.</summary>
    CannotBeRead,

    /// <summary>Two options come to the same kit.</summary>
    SameAsOther,

    /// <summary>Two choices write the same key.</summary>
    WrittenTwice,

    /// <summary>All options come to the kit as it is.</summary>
    NothingChanges,
}
