namespace StudioKit.Kits.Completing;

/// <summary>What a candidate writes.</summary>
public enum KitCandidateKind
{
    /// <summary>A key.</summary>
    Key,

    /// <summary>One of the words that a key allows.</summary>
    Word,

    /// <summary>Name of a part of the parts library.</summary>
    Part,

    /// <summary>Name of something that the kit describes elsewhere.</summary>
    Name,

    /// <summary>A unit behind a number.</summary>
    Unit,

    /// <summary>What is taken where nothing is written.</summary>
    Default,

    /// <summary>A value that shows how such values are written.</summary>
    Example,
}
