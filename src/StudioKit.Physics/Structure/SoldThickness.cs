using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>Thicknesses in which acrylic sheet is sold.</summary>
public static class SoldThickness
{
    private static readonly double[] Millimetres = [2, 3, 4, 5, 6, 8, 10];

    /// <summary>The thicknesses over another, thinnest first.</summary>
    /// <param name="thickness">The other; &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is outside its range, or not finite.</exception>
    /// <remarks>The parts library holds 2 to 5 mm of opal sheet; 6, 8 and 10 mm are what shops carry beyond, as a rule.</remarks>
    [Source("CommonPractice", "thicknesses of acrylic sheet in shops")]
    public static IEnumerable<Length> Over(Length thickness)
    {
        var other = Guard.Positive(thickness.Millimeters, nameof(thickness));
        return Millimetres.Where(sold => sold > other + 1e-6).Select(sold => Length.FromMillimeters(sold));
    }
}
