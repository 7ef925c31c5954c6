using System.Globalization;

namespace StudioKit.Planning;

/// <summary>Lengths, masses, forces, speeds and temperatures in the units of inch and pound.</summary>
/// <remarks>Inch and pound are exact by definition (yard and pound agreement of 1959).</remarks>
public static class InchText
{
    /// <summary>Parts of an inch that a steel rule has [1].</summary>
    public const int Parts = 32;

    private const double MillimetresPerInch = 25.4;
    private const double GramsPerOunce = 453.59237 / 16;
    private const double NewtonsPerPound = 0.45359237 * 9.80665;
    private const double MetresPerSecondPerMile = 0.44704;

    // Below this a thirty-second is coarser than what people cut and measure, and decimals take its place.
    private const double LeastByRule = 0.5;

    // A fraction stands for a short length only where it is as good as exact.
    private const double AsGoodAsExact = 0.002;

    /// <summary>Inches by a rule, to the nearest thirty-second in lowest terms; thousandths where the length is so short that this would be wrong by much.</summary>
    /// <param name="millimetres">The length [mm].</param>
    /// <returns>E.g. <c>23 5/8 in</c>; off by no more than a sixty-fourth of an inch, and by a two-thousandth below half an inch.</returns>
    public static string Length(double millimetres)
    {
        var inches = millimetres / MillimetresPerInch;
        var rounded = Math.Round(Math.Abs(inches) * Parts, MidpointRounding.AwayFromZero) / Parts;
        return Math.Abs(inches) < LeastByRule && Math.Abs(rounded - Math.Abs(inches)) > AsGoodAsExact
            ? Decimal(inches, Math.Abs(inches) < 0.0995 ? "0.000" : "0.00") + " in"
            : Fraction(Math.Sign(inches) * rounded, Parts);
    }

    /// <summary>Inches to the nearest thirty-second, however short.</summary>
    /// <param name="millimetres">The length [mm]; ≥ 0.</param>
    public static string ByRule(double millimetres) => ByRuleFigure(millimetres) + " in";

    /// <summary>The same without the unit.</summary>
    /// <param name="millimetres">The length [mm]; ≥ 0.</param>
    public static string ByRuleFigure(double millimetres) => FractionFigure(millimetres / MillimetresPerInch, Parts);

    /// <summary>Inches for what is set by hand, to the nearest quarter; without the unit.</summary>
    /// <param name="millimetres">The length [mm]; ≥ 0.</param>
    public static string ByHandFigure(double millimetres) => FractionFigure(millimetres / MillimetresPerInch, 4);

    /// <summary>Inches to the eighth below, never more than there is; thirty-seconds under half an inch. Without the unit.</summary>
    /// <param name="millimetres">The length [mm]; ≥ 0.</param>
    public static string AtMostFigure(double millimetres)
    {
        const double Hair = 1e-6;
        var inches = millimetres / MillimetresPerInch;
        var parts = inches < LeastByRule ? Parts : 8;
        return FractionFigure(Math.Floor((inches * parts) + Hair) / parts, parts);
    }

    /// <summary>Feet and whole inches, for what is paced out.</summary>
    /// <param name="millimetres">The length [mm]; ≥ 0.</param>
    public static string Paced(double millimetres)
    {
        var inches = (int)Math.Round(millimetres / MillimetresPerInch, MidpointRounding.AwayFromZero);
        var (feet, rest) = (inches / 12, inches % 12);
        return string.Join(' ', new[] { feet > 0 ? Whole(feet, "ft") : "", rest > 0 || feet == 0 ? Whole(rest, "in") : "" }.Where(part => part.Length > 0));
    }

    /// <summary>Inches in decimals, as finely as millimetres were.</summary>
    /// <param name="millimetres">The length [mm].</param>
    public static string Decimals(double millimetres) => Decimal(millimetres / MillimetresPerInch, Math.Abs(millimetres) >= 1000 ? "0.0" : Math.Abs(millimetres) >= 10 ? "0.0#" : "0.0##");

    /// <summary>Ounces to the tenth, and pounds with whole ounces.</summary>
    /// <param name="grams">The mass [g]; ≥ 0.</param>
    public static string Mass(double grams)
    {
        var ounces = grams / GramsPerOunce;
        if (ounces < 15.95)
        {
            return Decimal(ounces, ounces < 9.95 ? "0.0" : "0") + " oz";
        }

        var whole = (int)Math.Round(ounces, MidpointRounding.AwayFromZero);
        return whole % 16 == 0 ? Whole(whole / 16, "lb") : $"{Whole(whole / 16, "lb")} {Whole(whole % 16, "oz")}";
    }

    /// <summary>Pounds of force, to two digits.</summary>
    /// <param name="newtons">The force [N].</param>
    public static string Force(double newtons) => Decimal(newtons / NewtonsPerPound, Math.Abs(newtons / NewtonsPerPound) < 9.95 ? "0.0" : "0") + " lbf";

    /// <summary>Miles an hour.</summary>
    /// <param name="metresPerSecond">The speed [m/s].</param>
    public static string Speed(double metresPerSecond) => Decimal(metresPerSecond / MetresPerSecondPerMile, "0") + " mph";

    /// <summary>Degrees Fahrenheit.</summary>
    /// <param name="celsius">The temperature [°C].</param>
    public static string Temperature(double celsius) => Decimal((celsius * 1.8) + 32, "0") + " °F";

    private static string Fraction(double inches, int parts) => FractionFigure(inches, parts) + " in";

    private static string FractionFigure(double inches, int parts)
    {
        var count = (int)Math.Round(Math.Abs(inches) * parts, MidpointRounding.AwayFromZero);
        var (whole, rest, of) = (count / parts, count % parts, parts);
        while (rest > 0 && rest % 2 == 0)
        {
            (rest, of) = (rest / 2, of / 2);
        }

        var sign = inches < 0 && count > 0 ? "−" : "";
        return sign + (rest == 0 ? Whole(whole, "") : whole == 0 ? FormattableString.Invariant($"{rest}/{of}") : FormattableString.Invariant($"{whole} {rest}/{of}"));
    }

    private static string Whole(int number, string unit) => unit.Length == 0 ? number.ToString(CultureInfo.InvariantCulture) : FormattableString.Invariant($"{number} {unit}");

    private static string Decimal(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
