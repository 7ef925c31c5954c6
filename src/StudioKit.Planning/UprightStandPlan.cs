using StudioKit.Kits.Uprights;
using StudioKit.Physics;
using StudioKit.Physics.Packing;
using StudioKit.Physics.Structure;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>What holds an upright sheet: what is cut for it, how it goes together, and the wind it stands in.</summary>
public sealed record UprightStandPlan
{
    /// <summary>Name of the upright sheet.</summary>
    public required string Name { get; init; }

    /// <summary>What holds it.</summary>
    public required UprightCarrier Carrier { get; init; }

    /// <summary>Side of the sheet across the view.</summary>
    public required Length Width { get; init; }

    /// <summary>Side of the sheet from its lower to its upper edge.</summary>
    public required Length Height { get; init; }

    /// <summary>Lower edge over the ground, or over the middle of the back rail.</summary>
    public required Length LowerEdge { get; init; }

    /// <summary>How far the poles lean away from the camera.</summary>
    public required Angle Lean { get; init; }

    /// <summary>Pieces of pipe to cut, alike ones together.</summary>
    public required ValueList<UprightPiece> Pieces { get; init; }

    /// <summary>Fittings by kind; none where it needs none.</summary>
    public required ValueList<FittingCount> Fittings { get; init; }

    /// <summary>The sheet to cut.</summary>
    public required SheetPart Sheet { get; init; }

    /// <summary>Outside diameter of the pipe.</summary>
    public required Length PipeDiameter { get; init; }

    /// <summary>Subject to sheet in the set-up where it stands nearest.</summary>
    public required Length ToSubject { get; init; }

    /// <summary>Poles from middle to middle.</summary>
    public required Length PoleSpacing { get; init; }

    /// <summary>Room that is left at either side for the sheet to grow, what the poles' distance was rounded by among it.</summary>
    public required Length PlayPerEdge { get; init; }

    /// <summary>A whole pole from end to end, joined where it is of several pieces.</summary>
    public required Length PoleLength { get; init; }

    /// <summary>Couplings of a pole over the ground or the rail, along it, from below.</summary>
    public ValueList<Length> CouplingHeights { get; init; } = [];

    /// <summary>How deep a pole stands in the ground; nought but for stakes.</summary>
    public Length StakeDepth { get; init; }

    /// <summary>Level pull that a stake must hold, 30 cm over the ground; nought but for stakes.</summary>
    public Mass StakeHold { get; init; }

    /// <summary>Length of a foot; nought but for feet.</summary>
    public Length FootLength { get; init; }

    /// <summary>Mass laid on both feet together.</summary>
    public Mass Ballast { get; init; }

    /// <summary>Middle of the back rail over the ground; none but in a frame.</summary>
    public Length? RailHeight { get; init; }

    /// <summary>Middle of the bar across the back legs over the ground; none but in a frame.</summary>
    public Length? BarHeight { get; init; }

    /// <summary>Clips from pipe to pipe [1].</summary>
    public int PipeClips { get; init; }

    /// <summary>Push of a pole on its bar in the gust.</summary>
    public Force BarPush { get; init; }

    /// <summary>Clips that hold the sheet to each pole [1].</summary>
    public required int ClipsPerPole { get; init; }

    /// <summary>The sheet's corner to the nearest clip, along the pole.</summary>
    public required Length FirstClip { get; init; }

    /// <summary>Clip to clip, along the pole.</summary>
    public required Length ClipSpacing { get; init; }

    /// <summary>Pull that each clip must hold in the gust.</summary>
    public required Force ClipPull { get; init; }

    /// <summary>Cords from the upper corners to pegs [1].</summary>
    public int Cords { get; init; }

    /// <summary>Length of one cord, with what its knots take; nought without cords.</summary>
    public Length CordLength { get; init; }

    /// <summary>Foot of a pole to its pegs, level; nought without cords.</summary>
    public Length PegDistance { get; init; }

    /// <summary>What one peg must hold.</summary>
    public Mass PegHold { get; init; }

    /// <summary>How far the gust leans the top of a pole.</summary>
    public required Length TopLean { get; init; }

    /// <summary>How far the gust bows the sheet between its poles.</summary>
    public required Length Bow { get; init; }

    /// <summary>The wind that it is checked for.</summary>
    public required SiteWind Wind { get; init; }

    /// <summary>The strongest gust that it stands in by every check.</summary>
    public required Speed HighestGust { get; init; }

    /// <summary>The Beaufort force from which on it is taken down [1]: the lowest whose strongest gusts it does not stand in.</summary>
    public required int TakeDownFrom { get; init; }

    /// <summary>What gives first.</summary>
    public required StructuralCheckKind Weakest { get; init; }

    /// <summary>Mass of pipe and fittings.</summary>
    public required Mass CarrierMass { get; init; }

    /// <summary>Mass of the sheet.</summary>
    public required Mass SheetMass { get; init; }

    /// <summary>Where the mass of the sheet comes from.</summary>
    public required MassOrigin SheetMassOrigin { get; init; }

    /// <summary>How it goes up, step by step.</summary>
    public required ValueList<UprightStep> Assembly { get; init; }

    /// <summary>How it comes down, step by step.</summary>
    public ValueList<UprightPackingStep> PackingDown =>
    [
        UprightPackingStep.TakeSheet,
        .. Cords > 0 ? [UprightPackingStep.UntieCords] : Array.Empty<UprightPackingStep>(),
        .. Ballast > Mass.Zero ? [UprightPackingStep.LiftBallast] : Array.Empty<UprightPackingStep>(),
        .. Carrier switch
        {
            UprightCarrier.Stakes => [UprightPackingStep.PullStakes],
            UprightCarrier.Feet => [UprightPackingStep.PartFeet],
            _ => new[] { UprightPackingStep.UnclipPoles, UprightPackingStep.UnclipBar },
        },
        .. Assembly.Contains(UprightStep.JoinPoles) ? [UprightPackingStep.PartPoles] : Array.Empty<UprightPackingStep>(),
        UprightPackingStep.CountParts,
    ];

    /// <summary>The ten-minute mean in the open whose gusts it still stands in.</summary>
    public Speed HighestMean => HighestGust / Wind.GustOverMean;

    /// <summary>Upper edge over what the lower edge is counted from.</summary>
    public Length UpperEdge => LowerEdge + (Height * Math.Cos(Lean.Radians));

    /// <summary>Pieces of pipe [1].</summary>
    public int PieceCount => Pieces.Sum(piece => piece.Count);

    /// <summary>Its longest piece.</summary>
    public Length LongestPiece => Pieces.Select(piece => piece.Cut).Max();

    /// <summary>Whether clips on the poles carry its lower corners; else it stands on the ground or level with the panel.</summary>
    public bool CornersOnClips => LowerEdge >= 2 * PipeDiameter;

    /// <summary>All clips at the sheet: those on the poles, and where it stands on nothing one under each lower corner [1].</summary>
    public int SheetClips => 2 * (ClipsPerPole + (CornersOnClips ? 1 : 0));

    /// <summary>How it bears what is asked of it on the site.</summary>
    internal ValueList<StructuralCheck> Checks { get; init; } = [];
}
