namespace StudioKit.Planning.Cautions;

/// <summary>A printed sheet that carries cautions.</summary>
public enum CautionSheet
{
    /// <summary>The cover of the field book.</summary>
    FieldBook,

    /// <summary>The build sheet.</summary>
    Build,

    /// <summary>The session plan.</summary>
    Session,

    /// <summary>The handling cards of the groups that the caution names.</summary>
    Handling,
}
