using System.Globalization;

namespace StudioKit.Physics.Optics;

/// <summary>Image size over object size, without sign [1]; &gt; 0.</summary>
public readonly record struct Magnification
{
    /// <summary>Makes a magnification.</summary>
    /// <param name="value">Image over object size m [1]; &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite or not above zero.</exception>
    public Magnification(double value) => Value = Guard.Positive(value);

    /// <summary>Image over object size [1].</summary>
    public double Value { get; }

    /// <summary>As a ratio of image to object, e.g. <c>1:2</c> or <c>1.5:1</c>.</summary>
    public string Nominal => Value < 1
        ? string.Create(CultureInfo.InvariantCulture, $"1:{1 / Value:0.##}")
        : string.Create(CultureInfo.InvariantCulture, $"{Value:0.##}:1");

    /// <inheritdoc/>
    public override string ToString() => Nominal;
}
