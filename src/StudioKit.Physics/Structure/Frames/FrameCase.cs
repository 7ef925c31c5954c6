using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>What a frame is generated from.</summary>
public sealed record FrameCase
{
    /// <summary>Shape of the frame.</summary>
    public FrameShape Shape { get; init; } = FrameShape.Table;

    /// <summary>Panel's side across the camera's view; &gt; 0.</summary>
    public required Length PanelWidth { get; init; }

    /// <summary>Flat part of the panel along the camera's view; &gt; 0.</summary>
    public required Length PanelDepth { get; init; }

    /// <summary>Ground to the flat panel's underside; &gt; 0.</summary>
    public required Length Height { get; init; }

    /// <summary>Radius of the sweep at the sheet's underside; needed by a swept table only.</summary>
    public Length? SweepRadius { get; init; }

    /// <summary>Angle that the sheet turns through, up to 90°.</summary>
    public Angle SweepAngle { get; init; } = Angle.FromDegrees(90);

    /// <summary>Where the flashes below the panel go, the most wanted first.</summary>
    public IReadOnlyList<FlashCradleCase> Cradles { get; init; } = [];

    /// <summary>Longest piece that the pack takes; &gt; 0.</summary>
    public required Length LongestPiece { get; init; }

    /// <summary>The pipe.</summary>
    public required Pipe Pipe { get; init; }

    /// <summary>The fittings.</summary>
    public required FittingSet Fittings { get; init; }

    /// <summary>How far short of its socket's bottom a dry push fit stops; ≥ 0, under every socket's depth.</summary>
    public Length InsertionGap { get; init; } = Length.Zero;

    /// <summary>Slope of the ground that the feet must take up; 0° to 45°.</summary>
    public Angle Slope { get; init; } = Angle.Zero;

    /// <summary>How the panel sits; a swept sheet always lies over the rails.</summary>
    public PanelSeat Seat { get; init; } = PanelSeat.OverRails;

    /// <summary>Edges of the flat panel that rest on pads or a ledge.</summary>
    public PanelRests Rests { get; init; } = PanelRests.AllEdges;

    /// <summary>Pad between rail and panel, at least as thick as a fitting stands proud of the pipe; ≥ 0.</summary>
    public Length Pad { get; init; } = Length.FromMillimeters(4);

    /// <summary>Room at every panel edge for growth; ≥ 0.</summary>
    public Length EdgeClearance { get; init; } = Length.FromMillimeters(2);

    /// <summary>When lower stretchers are put in.</summary>
    public FrameStretchers Stretchers { get; init; } = FrameStretchers.WhereNeeded;

    /// <summary>Whether a leg stands under the middle of each side rail.</summary>
    public bool MiddleLegs { get; init; }

    /// <summary>Rotational stiffness of one push fit; &gt; 0.</summary>
    public required RotationalStiffness JointStiffness { get; init; }

    /// <summary>Shortest a foot's screw can be turned in, cap floor to ground; ≥ 0.</summary>
    public Length ShortestFoot { get; init; } = Length.FromMillimeters(20);

    /// <summary>Most that a foot's screw can travel; ≥ 0.</summary>
    public required Length FootTravel { get; init; }
}
