using StudioKit.Planning;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>One flash: what it does, then its power and distance in big numerals at the same places on every row.</summary>
/// <param name="Role">Where it stands.</param>
/// <param name="Name">Which flash, with what is mounted on it and where it stands.</param>
/// <param name="Firing">How it is metered and fired, which is set once, as it goes on behind the name; empty where there is nothing to say.</param>
/// <param name="Light">The flash as set; its power stands in both ways of the trade.</param>
/// <param name="Distance">Distance with its unit.</param>
/// <param name="Type">Sizes of type.</param>
internal sealed record FlashRow(string Role, string Name, string Firing, LightPlan Light, (string Figure, string Unit) Distance, CardType Type) : Block
{
    private const double WordPt = 7;
    private const double NameShare = 0.32;
    private const double PowerShare = 0.37;
    private const double Gap = 5;

    // Between the numerals, which start a little under the line over them, and a name under them.
    private const double Lead = 1.4;
    private const double Below = 1;

    private double RolePt => Type.Text + 1;

    private double NamePt => Type.Mount;

    private double FiringPt => Math.Max(Type.Small, TypeScale.Smallest);

    public override Fit Fit(double width, double height)
    {
        var (powerAt, distanceAt) = (width * NameShare, width * (NameShare + PowerShare));
        BigFigure[] figures = [Power(distanceAt - powerAt - Gap), new($"distance{DistanceFormat.BesideCentimetres(Light.Distance)}", Distance.Figure, Distance.Unit)];

        // Figures that are too wide for their places even at the least size move to the left, into the name's place.
        distanceAt = Math.Min(distanceAt, width - figures[1].Width(Type.LeastNumerals));
        powerAt = Math.Min(powerAt, distanceAt - Gap - figures[0].Width(Type.LeastNumerals));
        var size = Math.Min(Size(figures[0], distanceAt - powerAt - Gap), Size(figures[1], width - distanceAt));
        var numerals = BigFigure.Height(size, WordPt);
        var apart = NamePt > FiringPt;
        var name = apart ? Name : Name + Firing;
        var beside = TextWrap.Lines(name, powerAt - Gap, NamePt, TextWeight.Regular);
        var under = TextWrap.Lines(name, width, NamePt, TextWeight.Regular);
        IReadOnlyList<string> firing = apart && Firing.Length > 0 ? TextWrap.Lines(Firing.TrimStart(',', ';', ' '), width, FiringPt, TextWeight.Regular) : [];
        var role = TypeScale.LineHeight(RolePt);
        var (ifBeside, ifUnder) = (Math.Max(role + Height(beside), numerals), Math.Max(role, numerals + Lead) + Height(under));

        // A long name stands under the numerals, where it takes fewer lines, if the row is lower for it.
        var (names, nameTop) = ifUnder < ifBeside ? (under, ifUnder - Height(under)) : (beside, role);
        var row = Math.Min(ifBeside, ifUnder);
        return Layout.Fit.WholeOrNothing(this, "A flash's row", row + (firing.Count * TypeScale.LineHeight(FiringPt)) + Below, height, () =>
        [
            .. TypeScale.Set([Role], 0, RolePt, TextWeight.Bold),
            .. TypeScale.Set(names, 0, NamePt, TextWeight.Regular, top: nameTop),
            .. TypeScale.Set(firing, 0, FiringPt, TextWeight.Regular, top: row),
            .. figures[0].Marks(powerAt, 0.6, size, WordPt),
            .. figures[1].Marks(distanceAt, 0.6, size, WordPt),
        ]);
    }

    private double Height(IReadOnlyList<string> names) => names.Count * TypeScale.LineHeight(NamePt);

    // The second way of writing a power stands behind the numerals; where that would make them too small, over them.
    private BigFigure Power(double room)
    {
        var mark = Light.Mark;
        if (mark.InFullStops == mark.AsOneFraction)
        {
            return new("power", mark.AsOneFraction);
        }

        var behind = new BigFigure("power", mark.AsOneFraction, mark.InFullStops);
        return behind.Width(Type.LeastNumerals) <= room ? behind : new($"power {mark.InFullStops}", mark.AsOneFraction);
    }

    private double Size(BigFigure figure, double room) => Math.Max(Type.LeastNumerals, Math.Floor(Math.Min(Type.Flashes, 100 * room / figure.Width(100)) * 2) / 2);
}
