using PdfSharp.Fonts;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Pdf;

/// <summary>Gives PDFsharp the bundled fonts and no others, so that a sheet never depends on the machine's fonts.</summary>
internal sealed class BundledFontResolver : IFontResolver
{
    private static readonly Lock Gate = new();

    /// <summary>Makes this the process's font resolver; PDFsharp has one slot for all documents.</summary>
    public static void Install()
    {
        lock (Gate)
        {
            if (GlobalFontSettings.FontResolver is not BundledFontResolver)
            {
                GlobalFontSettings.FontResolver = new BundledFontResolver();
            }
        }
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        Enum.TryParse<FontFace>(familyName, out var face)
            ? new FontResolverInfo((face == FontFace.WideBold ? FontFace.Wide : face).ToString(), mustSimulateBold: face == FontFace.WideBold, mustSimulateItalic: italic)
            : null;

    public byte[]? GetFont(string faceName) => BundledFonts.Bytes(Enum.Parse<FontFace>(faceName));
}
