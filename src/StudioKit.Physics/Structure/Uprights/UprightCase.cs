using UnitsNet;

namespace StudioKit.Physics.Structure.Uprights;

/// <summary>A sheet between two poles, on its site.</summary>
public sealed record UprightCase
{
    /// <summary>What the poles stand in.</summary>
    public required UprightFooting Footing { get; init; }

    /// <summary>The sheet.</summary>
    public required Sheet Sheet { get; init; }

    /// <summary>Pipe of the poles.</summary>
    public required Pipe Pipe { get; init; }

    /// <summary>Side from pole to pole; &gt; 0.</summary>
    public required Length Width { get; init; }

    /// <summary>Side along the poles; &gt; 0.</summary>
    public required Length Height { get; init; }

    /// <summary>Lower edge over the ground, or over the rail that holds the poles; ≥ 0.</summary>
    public required Length LowerEdge { get; init; }

    /// <summary>How far the poles lean away from upright; 0° to 45°.</summary>
    public Angle Lean { get; init; } = Angle.Zero;

    /// <summary>Mass of the sheet; ≥ 0.</summary>
    public required Mass SheetMass { get; init; }

    /// <summary>Subject to sheet; &gt; 0.</summary>
    public required Length ToSubject { get; init; }

    /// <summary>Gust to stand in, from before or behind; ≥ 0.</summary>
    public required Speed Gust { get; init; }

    /// <summary>Air temperature of a warm day.</summary>
    public required Temperature Air { get; init; }

    /// <summary>How much warmer than the air sheet and pipe get in the sun; ≥ 0.</summary>
    public required TemperatureDelta SunWarming { get; init; }

    /// <summary>Temperature at which the poles were set.</summary>
    public Temperature Built { get; init; } = Temperature.FromDegreesCelsius(20);

    /// <summary>Depth of a stake; &gt; 0. Only for stakes.</summary>
    public Length StakeDepth { get; init; } = Length.FromCentimeters(20);

    /// <summary>Level pull that a stake bore; ≥ 0. Only for stakes.</summary>
    public Force StakeHold { get; init; } = Force.Zero;

    /// <summary>Height of that pull over the ground; ≥ 0. Only for stakes.</summary>
    public Length StakePulledAt { get; init; } = Length.FromCentimeters(30);

    /// <summary>Length of a foot; &gt; 0. Only for feet.</summary>
    public Length FootLength { get; init; } = Length.FromCentimeters(40);

    /// <summary>Mass of both feet with their fittings; ≥ 0. Only for feet.</summary>
    public Mass FeetMass { get; init; } = Mass.Zero;

    /// <summary>Mass laid on both feet together; ≥ 0. Only for feet.</summary>
    public Mass Ballast { get; init; } = Mass.Zero;

    /// <summary>Friction between feet and ground [1]; &gt; 0. Only for feet.</summary>
    public double Friction { get; init; } = 0.4;

    /// <summary>Slope of the ground; 0° to 45°. Only for feet.</summary>
    public Angle Slope { get; init; } = Angle.Zero;

    /// <summary>Heights over ground or rail at which dry couplings join the parts of a pole, along it; ≥ 0.</summary>
    public IReadOnlyList<Length> Couplings { get; init; } = [];

    /// <summary>Rotational stiffness of one push fit; &gt; 0. Only for feet and couplings.</summary>
    public RotationalStiffness JointStiffness { get; init; } = RotationalStiffness.FromNewtonMetersPerRadian(100);

    /// <summary>The rail that holds the poles down to the bar under it; ≥ 0. Only for a frame.</summary>
    public Length RailToBar { get; init; } = Length.Zero;

    /// <summary>Cords at 45° from the upper corners, half of them before and half behind; a multiple of 4 [1].</summary>
    public int Cords { get; init; }

    /// <summary>What the peg of one cord holds; ≥ 0.</summary>
    public Force PegHold { get; init; } = Force.Zero;

    /// <summary>Times that the pipe's strength exceeds what the poles bear [1]; ≥ 1.</summary>
    public double StrengthSafety { get; init; } = 2;

    /// <summary>Times that what holds the sheet exceeds the gust's [1]; ≥ 1.</summary>
    public double WindSafety { get; init; } = 1.5;
}
