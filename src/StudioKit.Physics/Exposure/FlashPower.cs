using StudioKit.Physics.Exposure.Series;

namespace StudioKit.Physics.Exposure;

/// <summary>A flash's power setting as a share of full power [1]; above 0, at most 1.</summary>
public readonly record struct FlashPower
{
    /// <summary>Makes a power setting from its exact share.</summary>
    /// <param name="fraction">Share of full power P [1]; above 0, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside that range.</exception>
    public FlashPower(double fraction) => Fraction = Guard.Between(Guard.Positive(fraction), 0, 1);

    /// <summary>Full power.</summary>
    public static FlashPower Full { get; } = new(1);

    /// <summary>Share of full power [1].</summary>
    public double Fraction { get; }

    /// <summary>Stops under full power, −log₂ P [1]; ≥ 0.</summary>
    public double StopsBelowFull => -Math.Log2(Fraction);

    /// <summary>Makes a power setting from stops under full.</summary>
    /// <param name="stops">Stops under full power [1]; ≥ 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative or not finite.</exception>
    public static FlashPower FromStopsBelowFull(double stops) => new(Math.Pow(2, -Guard.NonNegative(stops)));

    /// <summary>As one fraction, e.g. <c>1/6.4</c>; full power is <c>1/1</c>. What a certain flash shows is its <see cref="DialMark"/>.</summary>
    public string Nominal => PowerText.Decimal(Fraction, PowerStep.Third);

    /// <inheritdoc/>
    public override string ToString() => Nominal;
}
