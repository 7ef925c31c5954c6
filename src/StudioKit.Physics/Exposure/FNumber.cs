using StudioKit.Physics.Exposure.Series;

namespace StudioKit.Physics.Exposure;

/// <summary>An f-number: focal length over entrance pupil diameter [1]; &gt; 0.</summary>
public readonly record struct FNumber
{
    /// <summary>Makes an f-number from its exact value.</summary>
    /// <param name="value">Exact f-number [1]; &gt; 0. For a marked third-stop value pass the exact value, 2^(k/6).</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite or not above zero.</exception>
    public FNumber(double value) => Value = Guard.Positive(value);

    /// <summary>The exact number [1].</summary>
    public double Value { get; }

    /// <summary>
    /// As engraved on the lens, e.g. <c>f/16</c>; between two third-stop marks with three digits, e.g. <c>f/13.7</c>.
    /// </summary>
    public string Nominal => ThirdStopText.FNumber(Value);

    /// <inheritdoc/>
    public override string ToString() => Nominal;
}
