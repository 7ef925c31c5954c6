using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Layout;

/// <summary>An empty box to tick with a pencil, drawn rather than set so that no font need have it.</summary>
internal static class TickBox
{
    /// <summary>What somebody hears who cannot see it.</summary>
    public const string InWords = "box to tick";

    public static Polygon At(double left, double lineHeight, double sizePt)
    {
        var side = 0.72 * lineHeight;
        var bottom = TypeScale.Baseline(sizePt) + (0.06 * lineHeight);
        return Polygon.Rectangle(new Bounds(left, bottom - side, left + side, bottom), Stroke.Edge);
    }
}
