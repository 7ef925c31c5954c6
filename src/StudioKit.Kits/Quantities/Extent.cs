namespace StudioKit.Kits.Quantities;

/// <summary>Two ends of a range, as in <c>f/2.8 to f/32</c>.</summary>
internal readonly record struct Extent<T>(T Low, T High)
    where T : struct;
