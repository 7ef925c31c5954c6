using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Kits.Studio;

/// <summary>The pipe frame that carries the panel.</summary>
public sealed record FrameSpec
{
    /// <summary>Shape of the frame.</summary>
    public FrameKind Kind { get; init; } = FrameKind.Table;

    /// <summary>Ground to the panel's underside.</summary>
    public Length Height { get; init; } = Length.FromMillimeters(500);

    /// <summary>The pipe it is made of.</summary>
    public PipeSpec Pipe { get; init; } = new();

    /// <summary>The fittings that join it.</summary>
    public FittingsSpec Fittings { get; init; } = new();

    /// <summary>How far short of its socket's bottom a dry push fit stops.</summary>
    public Length InsertionGap { get; init; } = Length.FromMillimeters(0);

    /// <summary>How the panel sits: on pads over the rails, or on a ledge between them.</summary>
    public PanelSeat PanelSeat { get; init; } = PanelSeat.OverRails;

    /// <summary>Edges of the panel's flat part that rest on pads or a ledge.</summary>
    public PanelRests PanelRests { get; init; } = PanelRests.AllEdges;

    /// <summary>Pad between rail and panel, at least as thick as a fitting stands proud of the pipe.</summary>
    public Length Pad { get; init; } = Length.FromMillimeters(4);

    /// <summary>Room at every panel edge for growth.</summary>
    public Length EdgeClearance { get; init; } = Length.FromMillimeters(2);

    /// <summary>When lower stretchers tie the legs.</summary>
    public FrameStretchers Stretchers { get; init; } = FrameStretchers.WhereNeeded;

    /// <summary>Centre line of the cradle rail to the bright window of the flash on it.</summary>
    public Length CradleStandOff { get; init; } = Length.FromMillimeters(60);

    /// <summary>Rotational stiffness of one push fit; no source gives one, so the default is a floor to be measured against.</summary>
    public RotationalStiffness JointStiffness { get; init; } = RotationalStiffness.FromNewtonMetersPerRadian(50);

    /// <summary>How far a foot's screw turns out (common practice, no source).</summary>
    public Length FootTravel { get; init; } = Length.FromMillimeters(120);

    /// <summary>Mass hung under the middle by cords from the top corners.</summary>
    public Mass Ballast { get; init; } = UnitsNet.Mass.Zero;

    /// <summary>Pegs through the feet.</summary>
    public PegsSpec Pegs { get; init; } = new();

    /// <summary>Longest piece allowed; the pack's inside length where the kit gives none.</summary>
    public Length? LongestPiece { get; init; }

    /// <summary>Mass as weighed; from geometry and density where the kit gives none.</summary>
    public Mass? Mass { get; init; }
}
