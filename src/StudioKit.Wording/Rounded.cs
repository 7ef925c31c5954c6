using System.Globalization;

namespace StudioKit.Wording;

/// <summary>Figures as they are printed.</summary>
public static class Rounded
{
    /// <summary>A figure with its sign; none before what rounds to nothing.</summary>
    /// <param name="value">The figure.</param>
    /// <param name="digits">Digits after the point.</param>
    public static string WithSign(double value, int digits)
    {
        var places = new string('0', digits);
        return Math.Round(value, digits, MidpointRounding.AwayFromZero).ToString($"+0.{places};-0.{places};0.{places}", CultureInfo.InvariantCulture);
    }

    /// <summary>Stops without their sign, and the word for so many of them.</summary>
    /// <param name="stops">The stops [1].</param>
    /// <param name="digits">Digits after the point.</param>
    public static string Stops(double stops, int digits) => WithWord(Math.Abs(stops).ToString($"F{digits}", CultureInfo.InvariantCulture), stops, digits);

    /// <summary>Stops with their sign, and the word for so many of them.</summary>
    /// <param name="stops">The stops [1].</param>
    /// <param name="digits">Digits after the point.</param>
    public static string SignedStops(double stops, int digits) => WithWord(WithSign(stops, digits), stops, digits);

    /// <summary>A share in percent; never all where something is missing, nor nothing where something is there.</summary>
    /// <param name="share">The share [1].</param>
    public static string Percent(double share) => share switch
    {
        <= 0 => "0 %",
        >= 1 => "100 %",
        < 0.001 => "under 0.1 %",
        > 0.999 => "over 99.9 %",
        < 0.01 or > 0.99 => string.Create(CultureInfo.InvariantCulture, $"{Math.Clamp(100 * share, 0.1, 99.9):0.0} %"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %"),
    };

    // What is printed decides: 1.04 is 1.0 stop.
    private static string WithWord(string figure, double stops, int digits) =>
        $"{figure} {(Math.Round(Math.Abs(stops), digits, MidpointRounding.AwayFromZero) > 1 ? "stops" : "stop")}";
}
