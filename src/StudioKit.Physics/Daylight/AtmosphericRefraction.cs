using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Daylight;

/// <summary>How much the air lifts the sun.</summary>
public static class AtmosphericRefraction
{
    private const double LowestSeen = -5.0 / 6;
    private const double CivilTwilight = -6;

    /// <summary>Lift at a height, in air of 1010 hPa and 10 °C.</summary>
    /// <param name="height">Height h without refraction; -90° to 90°.</param>
    /// <returns>1.02′/tan(h + 10.3/(h + 5.11)), h in degrees; 0° or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is out of its range.</exception>
    /// <remarks>Below -5/6°, where the sun is not seen, it falls off evenly to nothing at -6°, so that the light of the dusk does not jump (ours).</remarks>
    [Source("Meeus1998", "ch. 16, formula 16.4")]
    public static Angle Lift(Angle height)
    {
        var h = Guard.Between(height.Degrees, -90, 90, nameof(height));
        return h <= CivilTwilight ? Angle.Zero
            : h < LowestSeen ? Seen(LowestSeen) * ((h - CivilTwilight) / (LowestSeen - CivilTwilight))
            : Seen(h);
    }

    private static Angle Seen(double h) => Angle.FromDegrees(Math.Max(0, 1.02 / Math.Tan((h + (10.3 / (h + 5.11))) * Math.PI / 180) / 60));
}
