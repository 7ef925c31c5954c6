using StudioKit.Physics;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Assembling;

/// <summary>One act of putting a frame up: what it adds to what stands, what it moves, and where sockets still point when it is done.</summary>
public abstract record AssemblyStep
{
    private AssemblyStep()
    {
    }

    /// <summary>Its kind in words joined by hyphens, as files have it.</summary>
    public abstract string Kind { get; }

    /// <summary>Labels of the fittings that come in; every fitting comes in with one step.</summary>
    public ValueList<string> Joints { get; init; } = [];

    /// <summary>Labels of the pieces that come in; every piece comes in with one step.</summary>
    public ValueList<string> Members { get; init; } = [];

    /// <summary>Labels of what earlier steps put together and this one takes up again.</summary>
    public ValueList<string> Moved { get; init; } = [];

    /// <summary>The lines along which parts are pushed together.</summary>
    public ValueList<PartRun> Runs { get; init; } = [];

    /// <summary>Sockets of the fittings at hand that stay free.</summary>
    public ValueList<FreeSocket> FreeSockets { get; init; } = [];

    /// <summary>Pieces at hand that vanish between their fittings.</summary>
    public ValueList<ShortPieces> ShortPieces { get; init; } = [];

    /// <summary>Mistakes that are likely.</summary>
    public ValueList<WrongWay> WrongWays { get; init; } = [];

    /// <summary>Insertion marks are drawn on all pieces.</summary>
    /// <param name="Pieces">How many pieces there are [1].</param>
    /// <param name="Depths">How deep each kind of fitting takes a piece.</param>
    public sealed record MarkPieces(int Pieces, ValueList<(FittingKind Kind, Length Depth)> Depths) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "mark-pieces";
    }

    /// <summary>Feet are screwed into the caps of the legs.</summary>
    /// <param name="Level">Cap floor to ground on level ground.</param>
    /// <param name="Shortest">Shortest setting that the slope asks for.</param>
    /// <param name="Longest">Longest setting that the slope asks for.</param>
    /// <param name="Slope">The slope.</param>
    public sealed record FitFeet(Length Level, Length Shortest, Length Longest, Angle Slope) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "fit-feet";
    }

    /// <summary>The legs of one side are put together, each from the top down.</summary>
    /// <param name="Side">The side.</param>
    /// <param name="Places">Where each stands, in the order of the lines: from the front to the back.</param>
    public sealed record BuildLegs(FrameSide Side, ValueList<Length> Places) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "build-legs";
    }

    /// <summary>The rails of one side join its legs.</summary>
    /// <param name="Side">The side.</param>
    /// <param name="Rails">Its rails, from the ground up.</param>
    public sealed record JoinSide(FrameSide Side, ValueList<RailHeight> Rails) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "join-side";
    }

    /// <summary>The rails across are pushed into the left side.</summary>
    /// <param name="Rails">The rails, from the ground up.</param>
    public sealed record PushAcross(ValueList<RailHeight> Rails) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "push-across";
    }

    /// <summary>The right side is pushed onto the rails across.</summary>
    /// <param name="Rails">The rails, from the ground up.</param>
    public sealed record CloseFrame(ValueList<RailHeight> Rails) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "close-frame";
    }

    /// <summary>Pins go through joints that are pulled when the frame is lifted.</summary>
    /// <param name="At">Labels of the joints.</param>
    /// <param name="Hole">The hole that is drilled for each.</param>
    public sealed record PinJoints(ValueList<string> At, PinHole Hole) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "pin-joints";
    }

    /// <summary>The frame is set in its place and levelled.</summary>
    /// <param name="Slope">How the ground falls by the kit; none where it does not say which way.</param>
    /// <param name="Settings">How far each foot is turned out beforehand; empty where the kit does not say which way the ground falls.</param>
    /// <param name="LeastThread">Thread that every foot keeps in its nuts.</param>
    public sealed record SetOnFeet(Angle? Slope, ValueList<FootSetting> Settings, Length LeastThread) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "set-on-feet";
    }

    /// <summary>Ballast is hung under the middle.</summary>
    /// <param name="Mass">Its mass.</param>
    public sealed record HangBallast(Mass Mass) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "hang-ballast";
    }

    /// <summary>Pegs are driven, through the feet or for cords.</summary>
    /// <param name="Count">How many there are [1].</param>
    /// <param name="Hold">What each must hold.</param>
    /// <param name="Corners">Fittings that cords come down from at 45°; empty where the pegs go through the feet.</param>
    public sealed record DrivePegs(int Count, Mass Hold, ValueList<RailHeight> Corners) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "drive-pegs";
    }

    /// <summary>Strips that the panel rests on are stuck on the rails, or screwed to them.</summary>
    /// <param name="Ledge">The strips and how they sit.</param>
    public sealed record LayStrips(PanelLedge Ledge) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "lay-strips";
    }

    /// <summary>The panel is laid on its strips and clipped.</summary>
    /// <param name="Ledge">How it sits.</param>
    /// <param name="Underside">Level ground to its underside.</param>
    /// <param name="SatinUp">Whether its top is satin, so that it matters which side is up.</param>
    /// <param name="Sweep">How it rises at the back; none where it is flat.</param>
    public sealed record LayPanel(PanelLedge Ledge, Length Underside, bool SatinUp, SheetSweep? Sweep) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "lay-panel";
    }

    /// <summary>A flash goes under the panel.</summary>
    /// <param name="Flash">The flash and what holds it.</param>
    /// <param name="Named">Whether there are several, so that its name and set-ups are to be said.</param>
    public sealed record PutFlash(FlashBelow Flash, bool Named) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "put-flash";
    }

    /// <summary>The flashes below are fired once while the box is open.</summary>
    /// <param name="Flashes">Names of the flashes.</param>
    /// <param name="ClosedNext">Whether skirts close the box behind them.</param>
    public sealed record TestFlash(ValueList<string> Flashes, bool ClosedNext) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "test-flash";
    }

    /// <summary>The skirts close the box.</summary>
    /// <param name="Seams">What goes round the rail.</param>
    public sealed record HangSkirts(SkirtSeams Seams) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "hang-skirts";
    }

    /// <summary>A softbox is folded.</summary>
    /// <param name="Box">The softbox.</param>
    public sealed record FoldSoftbox(FoldedSoftbox Box) : AssemblyStep
    {
        /// <inheritdoc/>
        public override string Kind => "fold-softbox";
    }
}
