namespace StudioKit.Sheets.Fonts;

/// <summary>The font files that are bundled and embedded in every sheet.</summary>
internal enum FontFace
{
    /// <summary>Atkinson Hyperlegible Next, regular.</summary>
    Regular,

    /// <summary>Atkinson Hyperlegible Next, bold.</summary>
    Bold,

    /// <summary>Noto Sans regular, for letters that the first family has not.</summary>
    FallbackRegular,

    /// <summary>Noto Sans bold, for letters that the first family has not.</summary>
    FallbackBold,

    /// <summary>Droid Sans Fallback, for ideographs, kana and Hangul.</summary>
    Wide,

    /// <summary>The same made bold, as the family has one weight.</summary>
    WideBold,
}
