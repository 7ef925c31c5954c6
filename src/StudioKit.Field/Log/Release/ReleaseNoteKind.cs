namespace StudioKit.Field.Log.Release;

/// <summary>Something about a release that a user should know before it leaves.</summary>
public enum ReleaseNoteKind
{
    /// <summary>Subjects that are not sensitive are told as coarsely as a sensitive one of their session.</summary>
    OthersFollow,

    /// <summary>Sensitive subjects stay behind.</summary>
    LeftOut,

    /// <summary>Pictures of others stay behind, too, because they show a sensitive subject.</summary>
    SharedPictureLeftOut,

    /// <summary>The name of a sensitive picture's file holds a word of its place's name.</summary>
    PictureNameHoldsPlaceWord,

    /// <summary>A session has no subject and is not exported.</summary>
    NothingToExport,

    /// <summary>Another session is told exactly that lies near a sensitive one, or was on the same day.</summary>
    NeighbourToldExactly,

    /// <summary>What is said of the data set as a whole holds a word of a sensitive place's name.</summary>
    DescriptionHoldsPlaceWord,

    /// <summary>A field begins with a character that spreadsheets take for the start of a formula.</summary>
    LooksLikeFormula,
}
