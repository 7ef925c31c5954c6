using SkiaSharp;
using StudioKit.Typefaces;

namespace StudioKit.FieldFiles.Pictures;

/// <summary>The typeface of the sheets, for letters in pictures, bold so that they last where a picture is seen small; a machine without fonts of its own would draw none otherwise.</summary>
internal static class BundledTypeface
{
    private static readonly Lazy<SKTypeface> Loaded = new(Load);

    public static SKTypeface Bold => Loaded.Value;

    private static SKTypeface Load()
    {
        using var file = new MemoryStream(TypefaceFiles.Read("AtkinsonHyperlegibleNext-Bold.ttf"));
        return SKTypeface.FromStream(file);
    }
}
