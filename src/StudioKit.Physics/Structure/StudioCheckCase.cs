using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>A studio on its site, to be checked.</summary>
public sealed record StudioCheckCase
{
    /// <summary>The frame as generated.</summary>
    public required FrameResult Frame { get; init; }

    /// <summary>Its pipe.</summary>
    public required Pipe Pipe { get; init; }

    /// <summary>The panel's sheet.</summary>
    public required Sheet Sheet { get; init; }

    /// <summary>Panel's side across the camera's view; &gt; 0.</summary>
    public required Length PanelWidth { get; init; }

    /// <summary>Flat part of the panel along the camera's view; &gt; 0.</summary>
    public required Length PanelDepth { get; init; }

    /// <summary>Radius of the sweep; none for a flat panel.</summary>
    public Length? SweepRadius { get; init; }

    /// <summary>Mass of all that stands, without ballast: frame, panel, skirts, flash below; &gt; 0.</summary>
    public required Mass StandingMass { get; init; }

    /// <summary>Mass hung under the middle by cords from the top corners; ≥ 0.</summary>
    public Mass Ballast { get; init; } = Mass.Zero;

    /// <summary>Pegs through the feet, spread evenly over them [1]; ≥ 0.</summary>
    public int Pegs { get; init; }

    /// <summary>What one peg holds in the ground of the place, as measured there; ≥ 0.</summary>
    public Force PegHold { get; init; } = Force.Zero;

    /// <summary>Whether the pegs hold cords at 45° from the top corners instead of the feet.</summary>
    public bool Guyed { get; init; }

    /// <summary>Gust to stand in; ≥ 0.</summary>
    public Speed Gust { get; init; } = Speed.FromMetersPerSecond(5.4);

    /// <summary>Air temperature of a warm day; pipe and sheet in the sun are taken as warm as this and the next together.</summary>
    public Temperature Air { get; init; } = Temperature.FromDegreesCelsius(25);

    /// <summary>How much warmer than the air pipe gets in the sun; ≥ 0.</summary>
    public required TemperatureDelta SunWarming { get; init; }

    /// <summary>Temperature at which the studio was built.</summary>
    public Temperature Built { get; init; } = Temperature.FromDegreesCelsius(20);

    /// <summary>Heaviest subject with its container; ≥ 0.</summary>
    public required Mass Subject { get; init; }

    /// <summary>Push of an elbow leant on the panel or a rail; ≥ 0.</summary>
    public required Force Elbow { get; init; }

    /// <summary>Friction between feet and ground [1]; &gt; 0.</summary>
    public required double Friction { get; init; }

    /// <summary>Height of the skirts under the panel; nought where there are none.</summary>
    public Length SkirtHeight { get; init; } = Length.Zero;

    /// <summary>The upright sheet at its back; none where it holds none.</summary>
    public FrameSail? Sail { get; init; }

    /// <summary>Rotational stiffness of one push fit; &gt; 0.</summary>
    public required RotationalStiffness JointStiffness { get; init; }

    /// <summary>Times that the pipe's strength exceeds what the rails bear [1]; ≥ 1.</summary>
    public double StrengthSafety { get; init; } = 2;

    /// <summary>Times that a leg's critical load exceeds what it bears [1]; ≥ 1.</summary>
    public double BucklingSafety { get; init; } = 3;

    /// <summary>Times that moments and forces that hold the studio exceed the gust's [1]; ≥ 1.</summary>
    public double WindSafety { get; init; } = 1.5;

    /// <summary>Radius of the circle on which an elbow or an animal presses; &gt; 0.</summary>
    public Length ContactRadius { get; init; } = Length.FromMillimeters(20);
}
