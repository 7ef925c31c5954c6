namespace StudioKit.Field.Log.Matching;

/// <summary>How it is known in which framing of the kit a picture was taken.</summary>
public enum FramingMatchKind
{
    /// <summary>It was not asked for: no kit.</summary>
    NotAsked,

    /// <summary>Its sidecar names it.</summary>
    Sidecar,

    /// <summary>Its lens has this one only.</summary>
    Lens,

    /// <summary>Its scale is that of this one.</summary>
    Scale,

    /// <summary>Its f-number, shutter and ISO speed are those of this one's card.</summary>
    Settings,

    /// <summary>Not known: several are possible.</summary>
    Several,

    /// <summary>Not known: the file tells of no lens, scale or settings of the kit's.</summary>
    Unknown,
}
