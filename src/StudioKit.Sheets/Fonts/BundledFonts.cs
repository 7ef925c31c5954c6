using System.Collections.Concurrent;
using StudioKit.Typefaces;

namespace StudioKit.Sheets.Fonts;

/// <summary>Reads the bundled font files, each at its first use only.</summary>
internal static class BundledFonts
{
    public const string Family = "Atkinson Hyperlegible Next";

    public const string FallbackFamily = "Noto Sans";

    private static readonly ConcurrentDictionary<FontFace, byte[]> Files = new();
    private static readonly ConcurrentDictionary<FontFace, TrueTypeFont> Fonts = new();

    public static byte[] Bytes(FontFace face) => Files.GetOrAdd(face, Read);

    public static TrueTypeFont Metrics(FontFace face) => Fonts.GetOrAdd(face, f => TrueTypeFont.Parse(Bytes(f)));

    private static byte[] Read(FontFace face)
    {
        var name = face switch
        {
            FontFace.Regular => "AtkinsonHyperlegibleNext-Regular.ttf",
            FontFace.Bold => "AtkinsonHyperlegibleNext-Bold.ttf",
            FontFace.FallbackRegular => "NotoSans-Regular.ttf",
            FontFace.FallbackBold => "NotoSans-Bold.ttf",
            FontFace.Wide or FontFace.WideBold => "DroidSansFallback-Regular.ttf",
            _ => throw new ArgumentOutOfRangeException(nameof(face), face, "Not a bundled font."),
        };
        return TypefaceFiles.Read(name);
    }
}
