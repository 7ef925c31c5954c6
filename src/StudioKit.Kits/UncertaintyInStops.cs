using StudioKit.Physics;
using StudioKit.Physics.Sources;

namespace StudioKit.Kits;

/// <summary>How well a value of the kit is known, counted in stops of the light that follows from it.</summary>
public static class UncertaintyInStops
{
    /// <summary>An uncertainty that a kit writes after <c>±</c>, in stops.</summary>
    /// <param name="known">The uncertainty.</param>
    /// <param name="value">The value that it belongs to, in SI units; &gt; 0.</param>
    /// <param name="power">The power of the value that light goes with [1]: 2 for a guide number, 1 for a transmittance.</param>
    /// <returns>p·log₂(1 + share) stops [1]; the amount itself where it is written in stops.</returns>
    /// <exception cref="ArgumentNullException">There is no uncertainty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is not above zero, or not finite.</exception>
    [Source("Derived", "a share of a value, counted in factors of two")]
    public static double Of(Uncertainty known, double value, int power)
    {
        ArgumentNullException.ThrowIfNull(known);
        Guard.Positive(value);
        return known.Kind switch
        {
            UncertaintyKind.InStops => known.Amount,
            UncertaintyKind.Relative => power * Math.Log2(1 + known.Amount),
            _ => power * Math.Log2(1 + (known.Amount / value)),
        };
    }
}
