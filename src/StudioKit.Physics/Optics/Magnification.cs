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
}
