namespace StudioKit.Planning.Changes;

/// <summary>What is seen on the camera's display, against which something can be turned.</summary>
public enum Symptom
{
    /// <summary>Corners of the white background do not blink as overexposed.</summary>
    GreyCorners,

    /// <summary>Nothing of the background blinks.</summary>
    NothingBlinks,

    /// <summary>The subject is washed out, its dark parts grey.</summary>
    WashedOut,

    /// <summary>Legs and hairs are eaten by the light from below.</summary>
    EatenLegs,

    /// <summary>Edges are eaten by the light of the sheet behind.</summary>
    EatenEdges,

    /// <summary>A bright spot over the flash below.</summary>
    HotSpot,

    /// <summary>The subject is too dark.</summary>
    SubjectDark,

    /// <summary>The subject is too bright.</summary>
    SubjectBright,

    /// <summary>Nothing but a silhouette.</summary>
    Silhouette,

    /// <summary>A frame is grey or dark now and then.</summary>
    FrameMissing,

    /// <summary>Edges are smeared.</summary>
    Smeared,

    /// <summary>Habitat or scene is too bright.</summary>
    SceneBright,

    /// <summary>Habitat or scene is too dark.</summary>
    SceneDark,

    /// <summary>The fill flash shows, with hard shadows.</summary>
    FlashShows,

    /// <summary>The black background shows with the flashes off.</summary>
    BackgroundShowsUnlit,

    /// <summary>The black background shows with the flashes on.</summary>
    BackgroundShowsLit,

    /// <summary>The outline is lost against the black.</summary>
    OutlineLost,

    /// <summary>A wet or glossy skin shines.</summary>
    Shine,

    /// <summary>The lens throws its shadow on the subject.</summary>
    LensShadow,
}
