using System.Numerics;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Lobes;

/// <summary>A beam given as a table: relative intensity at angles from the axis, in one or more half planes round it.</summary>
public sealed record TabulatedLobe : LightLobe
{
    private readonly double[] _polar;
    private readonly double[] _azimuth;
    private readonly double[] _values;

    /// <summary>Makes a beam from a table.</summary>
    /// <param name="polarAngles">Angles from the axis, rising from 0 to at most 180°.</param>
    /// <param name="azimuths">Half planes round the axis, rising from 0, which holds the emitter's width, to at most 360°.</param>
    /// <param name="intensities">Intensities, one row of polar angles for each half plane [cd or any unit]; ≥ 0, the first above 0.</param>
    /// <remarks>
    /// Half planes that end at 0, 90° or 180° are mirrored to the full turn, as LM-63 has it. Values are taken relative to the axial one.
    /// </remarks>
    /// <exception cref="ArgumentException">The angles do not rise from 0, or the table has another size.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An intensity is negative or not finite, or the axial one is zero.</exception>
    public TabulatedLobe(IReadOnlyList<Angle> polarAngles, IReadOnlyList<Angle> azimuths, IReadOnlyList<double> intensities)
    {
        ArgumentNullException.ThrowIfNull(intensities);
        _polar = Rising(polarAngles, Math.PI, nameof(polarAngles));
        _azimuth = Rising(azimuths, 2 * Math.PI, nameof(azimuths));
        if (intensities.Count != _polar.Length * _azimuth.Length)
        {
            throw new ArgumentException("There must be one intensity for every pair of angles.", nameof(intensities));
        }

        var axial = Guard.Positive(intensities[0], nameof(intensities));
        _values = [.. intensities.Select(value => Guard.NonNegative(value, nameof(intensities)) / axial)];
        FluxOverAxialIntensity = Guard.Positive(Flux(), nameof(intensities));
    }

    /// <inheritdoc/>
    [Source("Derived", "trapezoidal sum of the table over the sphere")]
    public override double FluxOverAxialIntensity { get; }

    /// <summary>Full angle at half intensity in one plane through the axis: from where the beam first falls to half on one side to where it does on the other.</summary>
    /// <param name="turn">Which plane: 0° holds the emitter's width, 90° its height.</param>
    /// <returns>The angle; twice the table's last angle at most, as there is nothing beyond.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not finite.</exception>
    [Source("Iso2827", "coverage angle, by half of the axial intensity")]
    public Angle HalfIntensityAngle(Angle turn)
    {
        var azimuth = Guard.Finite(turn.Radians) % (2 * Math.PI);
        return Angle.FromRadians(HalfAngle(Folded(azimuth)) + HalfAngle(Folded((azimuth + Math.PI) % (2 * Math.PI))));
    }

    /// <inheritdoc/>
    public bool Equals(TabulatedLobe? other) =>
        other is not null && _polar.AsSpan().SequenceEqual(other._polar) && _azimuth.AsSpan().SequenceEqual(other._azimuth)
        && _values.AsSpan().SequenceEqual(other._values);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(_polar.Length, _azimuth.Length, FluxOverAxialIntensity);

    internal override Vector<double> Relative(Vector<double> across, Vector<double> along, Vector<double> axial)
    {
        var result = Vector<double>.Zero;
        for (var lane = 0; lane < VectorMath.Lanes; lane++)
        {
            var polar = Math.Acos(Math.Clamp(axial[lane], -1, 1));
            var azimuth = _azimuth.Length == 1 ? 0 : Math.Atan2(along[lane], across[lane]);
            result = result.WithElement(lane, At(polar, Folded(azimuth)));
        }

        return result;
    }

    // Straight between the table's angles, as everywhere in it.
    private double HalfAngle(double azimuth)
    {
        for (var i = 1; i < _polar.Length; i++)
        {
            var (before, here) = (At(_polar[i - 1], azimuth), At(_polar[i], azimuth));
            if (here <= 0.5)
            {
                return _polar[i - 1] + ((_polar[i] - _polar[i - 1]) * (before - 0.5) / (before - here));
            }
        }

        return _polar[^1];
    }

    // Brings any azimuth into the part of the turn that the table gives.
    private double Folded(double azimuth)
    {
        var turn = azimuth < 0 ? azimuth + (2 * Math.PI) : azimuth;
        var last = _azimuth[^1];
        if (last <= Math.PI * 1.0001 && turn > Math.PI)
        {
            turn = (2 * Math.PI) - turn;
        }

        return last <= Math.PI * 0.5001 && turn > Math.PI / 2 ? Math.PI - turn : turn;
    }

    private double At(double polar, double azimuth)
    {
        if (polar > _polar[^1] + 1e-9)
        {
            return 0;
        }

        var (i, share) = Between(_polar, polar);
        var (j, turn) = Between(_azimuth, azimuth);
        var next = Math.Min(j + 1, _azimuth.Length - 1);
        return (Row(j, i, share) * (1 - turn)) + (Row(next, i, share) * turn);
    }

    private double Row(int azimuth, int polar, double share)
    {
        var first = (azimuth * _polar.Length) + polar;
        return polar + 1 < _polar.Length ? _values[first] + ((_values[first + 1] - _values[first]) * share) : _values[first];
    }

    private static (int Cell, double Share) Between(double[] angles, double angle)
    {
        var found = Array.BinarySearch(angles, angle);
        var cell = Math.Clamp(found >= 0 ? found : ~found - 1, 0, Math.Max(0, angles.Length - 2));
        return angles.Length == 1
            ? (0, 0)
            : (cell, Math.Clamp((angle - angles[cell]) / (angles[cell + 1] - angles[cell]), 0, 1));
    }

    // Midpoints of half a degree by five degrees: the table itself is seldom finer.
    private double Flux()
    {
        const int Rings = 360;
        const int Sectors = 72;
        var sum = 0.0;
        for (var i = 0; i < Rings; i++)
        {
            var polar = (i + 0.5) * Math.PI / Rings;
            for (var j = 0; j < Sectors; j++)
            {
                sum += At(polar, Folded(((j + 0.5) * 2 * Math.PI / Sectors) - Math.PI)) * Math.Sin(polar);
            }
        }

        return sum * 2 * Math.PI * Math.PI / (Rings * Sectors);
    }

    private static double[] Rising(IReadOnlyList<Angle> angles, double most, string name)
    {
        ArgumentNullException.ThrowIfNull(angles, name);
        double[] radians = [.. angles.Select(angle => angle.Radians)];
        var isRising = radians.Length > 0 && radians[0] == 0 && radians[^1] <= most * 1.000001
            && radians.Zip(radians.Skip(1)).All(pair => pair.Second > pair.First);
        return isRising ? radians : throw new ArgumentException("Angles must rise from 0 and stay within the turn.", name);
    }
}
