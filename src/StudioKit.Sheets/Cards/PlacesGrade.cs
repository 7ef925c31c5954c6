namespace StudioKit.Sheets.Cards;

/// <summary>How much a card says of where the lights about its subject stand, most first.</summary>
internal enum PlacesGrade
{
    /// <summary>Both views, and a line for each light.</summary>
    Drawn,

    /// <summary>A short line for each light.</summary>
    InWords,

    /// <summary>On which sheet it stands.</summary>
    Elsewhere,
}
