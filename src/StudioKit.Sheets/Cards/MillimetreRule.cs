using System.Globalization;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Cards;

/// <summary>A true-size rule along an upright edge of a card, which serves as scale in the picture.</summary>
internal static class MillimetreRule
{
    /// <summary>Width of the strip that the rule takes, numbers included [mm].</summary>
    public const double Strip = 11;

    private const double FirstTick = 4;

    /// <summary>Ticks at every millimetre, downwards from the card's upper end.</summary>
    public static IEnumerable<Primitive> Marks(double cardWidth, double cardHeight, bool atRight)
    {
        var (edge, inward, anchor) = atRight ? (cardWidth, -1, TextAnchor.End) : (0, 1, TextAnchor.Start);
        var length = (int)Math.Floor((cardHeight - (2 * FirstTick)) / 10) * 10;
        var tag = new Tag(TagKind.Figure) { Says = string.Create(CultureInfo.InvariantCulture, $"A rule of {length} mm with a line at every millimetre") };
        for (var mm = 0; mm <= length; mm++)
        {
            var y = FirstTick + mm;
            var tick = mm % 10 == 0 ? 4.5 : mm % 5 == 0 ? 3.2 : 2;
            yield return new Line(new Point(edge, y), new Point(edge + (inward * tick), y), mm % 10 == 0 ? new Stroke(0.25) : new Stroke(0.12)) { Tag = tag };
            if (mm % 10 == 0)
            {
                yield return new Label(
                    new Point(edge + (inward * 5), y), mm == 0 ? "mm" : mm.ToString(CultureInfo.InvariantCulture), TypeScale.Smallest, anchor, TextRise.Middle)
                { Tag = tag };
            }
        }
    }
}
