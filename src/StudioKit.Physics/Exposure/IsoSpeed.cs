using StudioKit.Physics.Exposure.Series;

namespace StudioKit.Physics.Exposure;

/// <summary>Arithmetic speed of the sensor, as ISO 12232 counts it [1]; &gt; 0.</summary>
public readonly record struct IsoSpeed
{
    /// <summary>Makes a speed from its exact value.</summary>
    /// <param name="value">Arithmetic speed S [1]; &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite or not above zero.</exception>
    public IsoSpeed(double value) => Value = Guard.Positive(value);

    /// <summary>Arithmetic speed [1].</summary>
    public double Value { get; }

    /// <summary>As marked on the dial, e.g. <c>ISO 640</c>.</summary>
    public string Nominal => ThirdStopText.Speed(Value);

    /// <summary>The number alone, for a place that says what it is, e.g. <c>500</c>.</summary>
    public string Mark => ThirdStopText.SpeedMark(Value);

    /// <inheritdoc/>
    public override string ToString() => Nominal;
}
