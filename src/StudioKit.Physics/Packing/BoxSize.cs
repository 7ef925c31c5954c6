using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>Three sides of a box, sorted.</summary>
public sealed record BoxSize
{
    /// <summary>Makes a box from sides in any order.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A side is not above zero.</exception>
    public BoxSize(Length first, Length second, Length third)
    {
        double[] sides = [Guard.Positive(first.Meters, nameof(first)), Guard.Positive(second.Meters, nameof(second)), Guard.Positive(third.Meters, nameof(third))];
        Array.Sort(sides);
        (Shortest, Middle, Longest) = (Length.FromMeters(sides[0]), Length.FromMeters(sides[1]), Length.FromMeters(sides[2]));
    }

    /// <summary>Longest side.</summary>
    public Length Longest { get; }

    /// <summary>Second side.</summary>
    public Length Middle { get; }

    /// <summary>Shortest side.</summary>
    public Length Shortest { get; }

    /// <summary>Volume of the box.</summary>
    public Volume Volume => Volume.FromCubicMeters(Longest.Meters * Middle.Meters * Shortest.Meters);

    /// <summary>Whether another box goes inside along the sides.</summary>
    /// <remarks>A tilted box could be a little larger; that is left out.</remarks>
    public bool Takes(BoxSize other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return other.Longest <= Longest && other.Middle <= Middle && other.Shortest <= Shortest;
    }
}
