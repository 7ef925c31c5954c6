namespace StudioKit.Planning.Packing;

/// <summary>What a note on a pack is about, where its words are made when it is read.</summary>
public enum PackNoteKind
{
    /// <summary>It has no lengths, masses or names of packed things in it.</summary>
    Sentence,

    /// <summary>Things whose mass is assumed.</summary>
    Weigh,

    /// <summary>Things strapped outside.</summary>
    Outside,

    /// <summary>A bag whose carrier's body mass is not known.</summary>
    NoBodyMass,

    /// <summary>Bags too large for a cabin.</summary>
    LargeBags,
}
