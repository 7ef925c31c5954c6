using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Drawings;

/// <summary>One line of text.</summary>
/// <param name="At">The point that the anchor and the rise speak of [mm].</param>
/// <param name="Text">The text.</param>
/// <param name="SizePt">Font size [pt], which does not scale with the drawing; &gt; 0.</param>
/// <param name="Anchor">Which end stands at the point.</param>
/// <param name="Rise">Which height stands at the point.</param>
/// <param name="Turn">Turn about the point, clockwise [rad].</param>
/// <param name="Weight">How heavy the letters are.</param>
/// <param name="Ink">What the letters are filled with: black, or white on a dark ground.</param>
public sealed record Label(
    Point At,
    string Text,
    double SizePt = 9,
    TextAnchor Anchor = TextAnchor.Start,
    TextRise Rise = TextRise.Baseline,
    double Turn = 0,
    TextWeight Weight = TextWeight.Regular,
    Fill Ink = Fill.Black) : Primitive
{
    // Letters with tails reach this share of the font size below the baseline, accents on capitals that share above it.
    private const double Tail = 0.22;
    private const double Crown = 0.92;

    /// <summary>Whether the letters slant, as those of a scientific name do.</summary>
    public bool Slanted { get; init; }

    /// <summary>Whether the text goes on under it: a reader who hears it needs the space that the end of the line stands for.</summary>
    internal bool GoesOn { get; init; }

    /// <inheritdoc/>
    public override Bounds Bounds
    {
        get
        {
            var width = TextMeter.Width(Text, SizePt, Weight);
            var size = SizePt * TextMeter.MillimetresPerPoint;
            var start = Baseline();
            var along = new Similarity(1, Turn, start.X, start.Y);
            return Bounds.Of(
                [
                    along.Apply(new Point(0, -Crown * size)), along.Apply(new Point(width, -Crown * size)),
                    along.Apply(new Point(0, Tail * size)), along.Apply(new Point(width, Tail * size)),
                ]);
        }
    }

    /// <inheritdoc/>
    public override Primitive Under(Similarity change) =>
        this with { At = change.Apply(At), Turn = Turn + change.Turn };

    /// <summary>Where the first letter starts, on the line the letters stand on.</summary>
    internal Point Baseline()
    {
        var back = Anchor switch
        {
            TextAnchor.Middle => -TextMeter.Width(Text, SizePt, Weight) / 2,
            TextAnchor.End => -TextMeter.Width(Text, SizePt, Weight),
            _ => 0,
        };
        var down = Rise switch
        {
            TextRise.Middle => TextMeter.CapHeight(SizePt, Weight) / 2,
            TextRise.Top => TextMeter.CapHeight(SizePt, Weight),
            TextRise.Below => 1.6 * TextMeter.CapHeight(SizePt, Weight),
            _ => 0,
        };
        return new Similarity(1, Turn, At.X, At.Y).Apply(new Point(back, down));
    }
}
