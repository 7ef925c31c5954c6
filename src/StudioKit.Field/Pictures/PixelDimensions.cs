namespace StudioKit.Field.Pictures;

/// <summary>Pixels across and down a picture.</summary>
/// <param name="Wide">Pixels across [1]; ≥ 1.</param>
/// <param name="High">Pixels down [1]; ≥ 1.</param>
public readonly record struct PixelDimensions(int Wide, int High)
{
    /// <summary>Pixels along the longer side [1].</summary>
    public int Longer => Math.Max(Wide, High);

    /// <summary>Pixels along the shorter side [1].</summary>
    public int Shorter => Math.Min(Wide, High);

    /// <summary>Both, as they are typed: <c>6000 x 4000</c>.</summary>
    public override string ToString() => FormattableString.Invariant($"{Wide} x {High}");
}
