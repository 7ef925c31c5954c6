using StudioKit.Planning;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>One flash: what it does, then its power and distance in big numerals at the same places on every row.</summary>
/// <param name="Role">Where it stands.</param>
/// <param name="Name">Which flash, with its modifier.</param>
/// <param name="Light">The flash as set; its power stands in both ways of the trade.</param>
/// <param name="Distance">Distance with its unit.</param>
/// <param name="Type">Sizes of type.</param>
internal sealed record FlashRow(string Role, string Name, LightPlan Light, (string Figure, string Unit) Distance, CardType Type) : Block
{
    private const double WordPt = 7;
    private const double NameShare = 0.32;
    private const double PowerShare = 0.37;
    private const double Gap = 5;

    private double RolePt => Type.Text + 1;

    private double NamePt => Type.Small;

    public override Fit Fit(double width, double height)
    {
        var (powerAt, distanceAt) = (width * NameShare, width * (NameShare + PowerShare));
        BigFigure[] figures = [Power(distanceAt - powerAt - Gap), new("distance", Distance.Figure, Distance.Unit)];
        var size = Math.Min(Size(figures[0], distanceAt - powerAt - Gap), Size(figures[1], width - distanceAt));
        var names = TextWrap.Lines(Name, powerAt - Gap, NamePt, TextWeight.Regular);
        var left = TypeScale.LineHeight(RolePt) + (names.Count * TypeScale.LineHeight(NamePt));
        var needed = Math.Max(left, BigFigure.Height(size, WordPt)) + 1.5;
        return Layout.Fit.WholeOrNothing(this, "A flash's row", needed, height, () =>
        [
            .. TypeScale.Set([Role], 0, RolePt, TextWeight.Bold),
            .. TypeScale.Set(names, 0, NamePt, TextWeight.Regular, top: TypeScale.LineHeight(RolePt)),
            .. figures[0].Marks(powerAt, 0.6, size, WordPt),
            .. figures[1].Marks(distanceAt, 0.6, size, WordPt),
        ]);
    }

    // The second way of writing a power stands behind the numerals; where that would make them too small, over them.
    private BigFigure Power(double room)
    {
        if (Light.Mark is not { } mark || mark.InFullStops == mark.AsOneFraction)
        {
            return new("power", Light.PowerMark);
        }

        var behind = new BigFigure("power", mark.AsOneFraction, mark.InFullStops);
        return behind.Width(Type.LeastNumerals) <= room ? behind : new($"power {mark.InFullStops}", mark.AsOneFraction);
    }

    // Where a mark is a sentence ("out of reach: ..."), it is words, not a setting, and may be small.
    private double Size(BigFigure figure, double room) =>
        Math.Max(TextMeter.Width(figure.Figure, Type.LeastNumerals, TextWeight.Bold) > room ? TypeScale.Small : Type.LeastNumerals,
            Math.Floor(Math.Min(Type.Flashes, 100 * room / figure.Width(100)) * 2) / 2);
}
