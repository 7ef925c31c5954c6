using System.Globalization;

namespace StudioKit.Physics.Exposure;

/// <summary>Brightness of a scene as the exposure value it asks for at ISO 100 [1].</summary>
public readonly record struct ExposureValue
{
    /// <summary>Makes an exposure value for ISO 100.</summary>
    /// <param name="atIso100">log₂(N²/t) at ISO 100 [1]; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public ExposureValue(double atIso100) => AtIso100 = Guard.Finite(atIso100);

    /// <summary>log₂(N²/t) at ISO 100 [1].</summary>
    public double AtIso100 { get; }

    /// <summary>With one decimal, e.g. <c>EV 12.3</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"EV {AtIso100:0.#}");
}
