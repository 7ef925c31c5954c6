using StudioKit.Physics;
using StudioKit.Physics.Packing;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Assembling;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>The frame: its geometry, what is cut for it and what is bought.</summary>
public sealed record FramePlan
{
    /// <summary>Every fitting and pipe in its place.</summary>
    public required FrameResult Geometry { get; init; }

    /// <summary>Pieces to cut, identical ones together.</summary>
    public required IReadOnlyList<CutListEntry> Pieces { get; init; }

    /// <summary>Fittings by kind, how many of each.</summary>
    public required IReadOnlyList<FittingCount> Fittings { get; init; }

    /// <summary>What the frame was generated from; none in a plan written by hand.</summary>
    internal FrameCase? Design { get; init; }

    /// <summary>What to cut where the fittings that were bought have other take-offs; worked out when it is asked for.</summary>
    public ValueList<TakeOffTable> TakeOffs => Design is { } design && Geometry.Members.Count > 0 ? Studio.Frames.TakeOffTables.Of(design, Geometry, Fittings) : [];

    /// <summary>How far short of its socket's bottom a dry push fit stops.</summary>
    public Length InsertionGap => Geometry.Members.Count > 0 ? Geometry.Members[0].InsertionGap : Length.Zero;

    /// <summary>Depth to which a pipe goes into each kind of fitting, where its insertion mark is drawn.</summary>
    public IReadOnlyDictionary<FittingKind, Length> InsertionDepths { get; init; } = new Dictionary<FittingKind, Length>();

    /// <summary>Softboxes that are folded.</summary>
    public IReadOnlyList<FoldedSoftbox> Softboxes { get; init; } = [];

    /// <summary>Where each flash under the panel goes and what holds it there, in the order of the set-ups.</summary>
    public IReadOnlyList<FlashBelow> LowerFlashes { get; init; } = [];

    /// <summary>How the sheet rises behind the flat part; none for a flat sheet.</summary>
    public SheetSweep? Sweep { get; init; }

    /// <summary>What the skirts' sheets have for their seams; none without skirts.</summary>
    public SkirtSeams? Seams { get; init; }

    /// <summary>Outside diameter of the pipe.</summary>
    public Length PipeDiameter { get; init; }

    /// <summary>Once round the pipe.</summary>
    public Length PipeGirth => PipeDiameter * Math.PI;

    /// <summary>Hole for a foot's screw in the floor of a cap; none where the frame has no feet.</summary>
    public Length? FootHole { get; init; }

    /// <summary>How far each foot is turned out where the kit says which way its ground falls; empty otherwise.</summary>
    public IReadOnlyList<FootSetting> FootSettings { get; init; } = [];

    /// <summary>Clips along the panel's front edge, from the left.</summary>
    public IReadOnlyList<EdgeClip> FrontClips { get; init; } = [];

    /// <summary>Every height that a builder measures off, from the ground up.</summary>
    public IReadOnlyList<FrameHeight> Heights { get; init; } = [];

    /// <summary>What is cut and bought.</summary>
    public required Workshop Workshop { get; init; }

    /// <summary>Name of the pipe.</summary>
    public string PipeName => Workshop.PipeName;

    /// <summary>Name of the family of fittings.</summary>
    public string FittingsName => Workshop.FittingsName;

    /// <summary>Panel, skirts, upright sheets and softbox parts to cut.</summary>
    public IReadOnlyList<SheetPart> SheetParts => Workshop.SheetParts;

    /// <summary>How many studios are built at once [1]; cuts and shopping are for all of them, everything else is for one.</summary>
    public int Studios => Workshop.Studios;

    /// <summary>Holders of flashes that are built of the same pipe.</summary>
    public ValueList<BuiltHolder> BuiltHolders => Workshop.BuiltHolders;

    /// <summary>Which pieces are cut from which pipe lengths.</summary>
    public BarCutPlan PipeCuts => Workshop.PipeCuts;

    /// <summary>Which pieces are cut from which sheets.</summary>
    public SheetCutPlan SheetCuts => Workshop.SheetCuts;

    /// <summary>What to buy or take from the shelf.</summary>
    public IReadOnlyList<ShoppingLine> Shopping => Workshop.Shopping;

    /// <summary>Currency of the prices, ISO 4217.</summary>
    public string Currency => Workshop.Currency;

    /// <summary>What it costs where every line has a price; none where one has not.</summary>
    public decimal? TotalCost => Workshop.TotalCost;

    /// <summary>What to put together, in order.</summary>
    public IReadOnlyList<AssemblyStep> Assembly { get; init; } = [];

    /// <summary>What to take apart, in order.</summary>
    public IReadOnlyList<PackingStep> PackingDown { get; init; } = [];

    /// <summary>Mass of all that stands, without ballast: pipe, fittings, panel, skirts and the flashes on their cradles.</summary>
    public Mass StandingMass { get; init; }

    /// <summary>How panel and frame bear what is asked of them on the site.</summary>
    internal IReadOnlyList<StructuralCheck> StructuralChecks { get; init; } = [];

    /// <summary>The wind that it is to stand in; none in a plan written by hand.</summary>
    public SiteWind? Wind { get; init; }

    /// <summary>Mass hung under the middle.</summary>
    public Mass Ballast { get; init; }

    /// <summary>Pegs through the feet [1].</summary>
    public int Pegs { get; init; }

    /// <summary>What one peg holds, by the kit.</summary>
    public Force PegHold { get; init; }

    /// <summary>Mass of the strips of pad or ledge under the panel; nought where the frame was weighed with them.</summary>
    public Mass RestMass { get; init; }

    /// <summary>Mass of all skirts.</summary>
    public Mass SkirtMass { get; init; }

    /// <summary>Mass of pipe and fittings.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Where the mass comes from.</summary>
    public required MassOrigin MassOrigin { get; init; }
}
