using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>Mass of pipe.</summary>
public static class PipeMass
{
    /// <summary>Mass of a metre: as catalogued or weighed, else from geometry and density.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <returns>Mass of a unit length [kg/m].</returns>
    /// <exception cref="ArgumentNullException">There is no pipe.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A field of the pipe is outside its range.</exception>
    [Source("Derived", "mass = density × area × length")]
    public static double PerMetre(Pipe pipe)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        return pipe.MassPerLength is { } given
            ? Guard.Positive(given.KilogramsPerMeter, nameof(pipe.MassPerLength))
            : PipeSection.MassPerLength(pipe.OutsideDiameter.Meters, pipe.Wall.Meters, pipe.Density.KilogramsPerCubicMeter);
    }
}
