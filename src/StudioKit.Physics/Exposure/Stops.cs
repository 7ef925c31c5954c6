using StudioKit.Physics.Exposure.Series;

namespace StudioKit.Physics.Exposure;

/// <summary>A ratio of light counted in factors of two [1]; positive means more light.</summary>
public readonly record struct Stops
{
    /// <summary>Makes a number of stops.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public Stops(double value) => Value = Guard.Finite(value);

    /// <summary>Number of factors of two [1].</summary>
    public double Value { get; }

    /// <summary>The ratio 2^stops [1]; &gt; 0.</summary>
    public double Ratio => Math.Pow(2, Value);

    /// <summary>Counts a ratio in stops.</summary>
    /// <param name="ratio">Ratio of two amounts of light [1]; &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not finite or not above zero.</exception>
    public static Stops FromRatio(double ratio) => new(Math.Log2(Guard.Positive(ratio)));

    /// <summary>Adds two numbers of stops.</summary>
    public static Stops operator +(Stops left, Stops right) => new(left.Value + right.Value);

    /// <summary>Takes one number of stops from another.</summary>
    public static Stops operator -(Stops left, Stops right) => new(left.Value - right.Value);

    /// <summary>Turns a gain into a loss.</summary>
    public static Stops operator -(Stops stops) => new(-stops.Value);

    /// <summary>To the nearest third, as a compensation dial shows it, e.g. <c>+1 2/3</c>.</summary>
    public string Nominal => ThirdStopText.Thirds(Value);

    /// <summary>To the nearest click of a power dial, e.g. <c>+1 1/2</c>.</summary>
    /// <param name="step">The dial's step.</param>
    public string NominalIn(PowerStep step) => ThirdStopText.Rounded(Value, step);

    /// <summary>How many, without a sign, to the nearest click of a power dial with its noun, e.g. <c>1/2 stop</c>.</summary>
    /// <param name="step">The dial's step.</param>
    public string CountIn(PowerStep step) => ThirdStopText.Count(Value, step);

    /// <summary>Signed, with two decimals, e.g. <c>+0.51</c>.</summary>
    public override string ToString() => ThirdStopText.Signed(Value);
}
