namespace StudioKit.Kits.Cards;

/// <summary>How a card is held.</summary>
public enum CardOrientation
{
    /// <summary>The longer side of a standard size stands upright.</summary>
    Upright,

    /// <summary>The card lies on its longer side.</summary>
    Lying,
}
