using StudioKit.Physics.Exposure.Series;

namespace StudioKit.Physics.Exposure;

/// <summary>How long the shutter stands open.</summary>
public readonly record struct ShutterSpeed
{
    /// <summary>Makes a shutter speed from an exact time.</summary>
    /// <param name="seconds">Exposure time t [s]; &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is not finite or not above zero.</exception>
    public ShutterSpeed(double seconds) => Seconds = Guard.Positive(seconds);

    /// <summary>Exposure time [s].</summary>
    public double Seconds { get; }

    /// <summary>As marked on the dial, e.g. <c>1/125 s</c> or <c>0.5 s</c>.</summary>
    public string Nominal => ThirdStopText.Time(Seconds);

    /// <summary>The number alone, in seconds, for a place that sets the unit apart, e.g. <c>1/125</c>.</summary>
    public string Mark => ThirdStopText.TimeMark(Seconds);

    /// <inheritdoc/>
    public override string ToString() => Nominal;
}
