using StudioKit.Physics.Sources;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>Mass of the studio's own parts, as weighed or from geometry and density.</summary>
public static class StudioMass
{
    /// <summary>Mass of a frame: pipe and fittings.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="pipe">Its pipe.</param>
    /// <param name="fittings">Its fittings.</param>
    /// <param name="weighed">Mass as weighed, which goes before geometry; none where it was not.</param>
    /// <returns>The mass and its basis.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A mass is not above zero.</exception>
    /// <remarks>Σ mass per length × cut length + Σ fittings; pads, clips and foot screws are not in it.</remarks>
    [Source("Derived", "mass = density × area × length")]
    public static MassStatement Of(FrameResult frame, Pipe pipe, FittingSet fittings, Mass? weighed = null)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(fittings);
        var joints = frame.FittingCounts.Sum(count => count.Value * fittings.Of(count.Key).Mass.Kilograms);
        return Choose(weighed, (PipeMass.PerMetre(pipe) * frame.PipeLength.Meters) + joints);
    }

    /// <summary>Mass of a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="width">First side; &gt; 0.</param>
    /// <param name="length">Second side; &gt; 0.</param>
    /// <param name="weighed">Mass as weighed, which goes before geometry; none where it was not.</param>
    /// <returns>The mass and its basis.</returns>
    /// <exception cref="ArgumentNullException">There is no sheet.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A size or mass is not above zero.</exception>
    [Source("Derived", "mass = density × volume")]
    public static MassStatement Of(Sheet sheet, Length width, Length length, Mass? weighed = null)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var area = Guard.Positive(width.Meters, nameof(width)) * Guard.Positive(length.Meters, nameof(length));
        return Choose(weighed, sheet.Density.KilogramsPerCubicMeter * sheet.Thickness.Meters * area);
    }

    private static MassStatement Choose(Mass? weighed, double geometry) => weighed is { } mass
        ? new MassStatement(Mass.FromKilograms(Guard.Positive(mass.Kilograms, nameof(weighed))), MassOrigin.Weighed)
        : new MassStatement(Mass.FromKilograms(geometry), MassOrigin.FromGeometry);
}
