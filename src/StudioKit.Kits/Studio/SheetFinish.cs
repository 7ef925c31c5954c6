namespace StudioKit.Kits.Studio;

/// <summary>What the top of a sheet is like.</summary>
public enum SheetFinish
{
    /// <summary>Glossy: it mirrors a light by what a smooth surface turns back.</summary>
    Gloss,

    /// <summary>Satin: it spreads what it turns back, so that no image of a light is seen.</summary>
    Satin,
}
