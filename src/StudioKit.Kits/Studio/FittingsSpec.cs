using UnitsNet;

namespace StudioKit.Kits.Studio;

/// <summary>A family of fittings for one pipe size.</summary>
public sealed record FittingsSpec
{
    /// <summary>Name of the family on the shopping list.</summary>
    public string Name { get; init; } = "20 mm PVC-U fittings";

    /// <summary>Outside diameter of the pipe that goes into their sockets; none where it was not given.</summary>
    public Length? PipeDiameter { get; init; }

    /// <summary>Elbow of 90°.</summary>
    public FittingSpec Elbow { get; init; } = Default(11, 16, 15);

    /// <summary>Tee.</summary>
    public FittingSpec Tee { get; init; } = Default(11, 16, 21);

    /// <summary>Cross with four ports in one plane.</summary>
    public FittingSpec Cross { get; init; } = Default(11, 16, 28);

    /// <summary>Corner with three ports at right angles.</summary>
    public FittingSpec Corner { get; init; } = Default(11, 16, 22);

    /// <summary>Straight coupling; its take-off is half the stop in its middle.</summary>
    public FittingSpec Coupling { get; init; } = Default(1, 16, 10);

    /// <summary>End cap; its take-off is nought.</summary>
    public FittingSpec Cap { get; init; } = Default(0, 16, 8);

    private static FittingSpec Default(double takeOff, double depth, double grams) => new()
    {
        TakeOff = Length.FromMillimeters(takeOff),
        SocketDepth = Length.FromMillimeters(depth),
        Mass = Mass.FromGrams(grams),
    };
}
