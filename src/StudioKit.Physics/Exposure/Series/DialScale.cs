using System.Globalization;

namespace StudioKit.Physics.Exposure.Series;

/// <summary>One dial with a click a third of a stop: exact values by index, and the rounded marks engraved for them.</summary>
/// <param name="origin">Exact value at index 0, in the dial's own unit; &gt; 0.</param>
/// <param name="clicksPerDoubling">Clicks that double the value [1]; negative where the value falls as the index grows.</param>
/// <param name="firstIndex">Index of the first mark [1].</param>
/// <param name="marks">The engraved numbers from that index on, in the dial's own unit.</param>
internal sealed class DialScale(double origin, double clicksPerDoubling, int firstIndex, double[] marks)
{
    // A value this close to a click, in clicks, was meant as that click: a fiftieth of a stop on a third-stop dial, far under the half click between two.
    private const double OnTheClick = 0.06;
    private const double SameNumber = 1e-6;

    /// <summary>Exact value of a click.</summary>
    public double Exact(double index) => origin * Math.Pow(2, index / clicksPerDoubling);

    /// <summary>Index of the click nearest to a value.</summary>
    public double NearestIndex(double value) => Math.Round(IndexOf(FromMark(value)), MidpointRounding.AwayFromZero);

    /// <summary>The first click whose index lies above the value's.</summary>
    public double IndexAbove(double value) => Math.Floor(IndexOf(FromMark(value)) + OnTheClick) + 1;

    /// <summary>The first click whose index lies below the value's.</summary>
    public double IndexBelow(double value) => Math.Ceiling(IndexOf(FromMark(value)) - OnTheClick) - 1;

    /// <summary>The exact value behind an engraved number; a number that no dial carries stays as it is.</summary>
    public double FromMark(double value)
    {
        var nearest = Math.Round(IndexOf(value), MidpointRounding.AwayFromZero);
        return IsMark(value, nearest) ? Exact(nearest) : value;
    }

    /// <summary>The engraved number for a value on the scale; none for a value between two clicks.</summary>
    public double? MarkOf(double value)
    {
        var nearest = Math.Round(IndexOf(value), MidpointRounding.AwayFromZero);
        var isOnTheClick = Math.Abs(IndexOf(value) - nearest) < OnTheClick;
        return isOnTheClick || IsMark(value, nearest) ? MarkAt(nearest) : null;
    }

    /// <summary>A number with three significant digits and no trailing zeros.</summary>
    public static string ThreeDigits(double value)
    {
        var decimals = Math.Clamp(2 - (int)Math.Floor(Math.Log10(value)), 0, 15);
        return Math.Round(value, decimals).ToString("0.###############", CultureInfo.InvariantCulture);
    }

    private double IndexOf(double value) => clicksPerDoubling * Math.Log2(value / origin);

    private bool IsMark(double value, double index) =>
        MarkAt(index) is { } mark && Math.Abs((value / mark) - 1) < SameNumber;

    private double? MarkAt(double index)
    {
        var position = index - firstIndex;
        return position >= 0 && position < marks.Length ? marks[(int)position] : null;
    }
}
