using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>Lengths as whole tenths of a millimetre, so that a fit is never a matter of rounding.</summary>
internal static class Tenths
{
    // Longer than any stock, and far within a whole number of tenths.
    private const double LongestMillimeters = 1e6;

    // Conversions from inches leave noise far below this; a real hundredth of a millimetre lies far above.
    private const double Noise = 1e-6;

    /// <summary>For what must be got out of the stock: pieces, kerf and trim are never made smaller.</summary>
    public static int Up(Length length, string name) => (int)Math.Ceiling(InTenths(length, name) - Noise);

    /// <summary>For what the stock gives: never made larger.</summary>
    public static int Down(Length length, string name) => (int)Math.Floor(InTenths(length, name) + Noise);

    /// <summary>Whether a length can be counted: none beyond it is ever cut, and no stock is longer.</summary>
    public static bool CanCount(Length length) => length.Millimeters <= LongestMillimeters;

    /// <summary>As much of a length of stock as can be counted.</summary>
    public static Length AtMostCountable(Length length) => CanCount(length) ? length : Length.FromMillimeters(LongestMillimeters);

    public static Length ToLength(int tenths) => Length.FromMillimeters(tenths / 10.0);

    /// <summary>A side of a piece up to the next tenth, however long it is.</summary>
    public static Length RoundedUp(Length side) => Length.FromMillimeters(Math.Ceiling((10 * side.Millimeters) - Noise) / 10);

    private static double InTenths(Length length, string name) =>
        10 * Guard.Between(length.Millimeters, 0, LongestMillimeters, name);
}
