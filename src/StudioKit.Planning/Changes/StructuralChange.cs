using StudioKit.Kits;
using StudioKit.Kits.Studio;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Changes;

/// <summary>A change of a kit that makes a structural check pass, found by planning the changed kit; one of the forms below.</summary>
public abstract record StructuralChange
{
    private StructuralChange()
    {
    }

    /// <summary>The kit with the change made.</summary>
    /// <param name="kit">The kit.</param>
    public abstract KitSpec Of(KitSpec kit);

    /// <summary>Strips under all four edges of the panel.</summary>
    public sealed record AllEdgesRest : StructuralChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => Changed(kit, frame => frame with { PanelRests = PanelRests.AllEdges });
    }

    /// <summary>A sheet of another thickness; a mass as weighed is that of the old sheet and goes.</summary>
    /// <param name="Thickness">The thickness, one that shops carry.</param>
    public sealed record OtherSheet(Length Thickness) : StructuralChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => kit with { Panel = kit.Panel with { Thickness = Thickness, Mass = null } };
    }

    /// <summary>Another radius of the sweep.</summary>
    /// <param name="Radius">The radius.</param>
    public sealed record OtherSweep(Length Radius) : StructuralChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => kit with { Panel = kit.Panel with { SweepRadius = Radius } };
    }

    /// <summary>More room at the edges.</summary>
    /// <param name="Room">Room at every edge.</param>
    public sealed record EdgeRoom(Length Room) : StructuralChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => Changed(kit, frame => frame with { EdgeClearance = Room });
    }

    /// <summary>Another pipe of the parts library with fittings that take it; a mass as weighed is that of the old frame and goes.</summary>
    /// <param name="Stocked">Pipe and fittings.</param>
    public sealed record OtherPipe(StockedPipe Stocked) : StructuralChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => Changed(kit, frame => frame with
        {
            Pipe = Stocked.Pipe,
            Fittings = SameSize(frame.Pipe.OutsideDiameter) ? frame.Fittings : Stocked.Fittings,
            Mass = null,
        });

        // Sizes in inches and in millimetres of one pipe differ by less.
        private bool SameSize(Length diameter) => Math.Abs((diameter - Stocked.Pipe.OutsideDiameter).Millimeters) < 0.05;
    }

    /// <summary>Stretchers whether the frame leans or not.</summary>
    public sealed record Stretched : StructuralChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => Changed(kit, frame => frame with { Stretchers = FrameStretchers.Always });
    }

    /// <summary>Cords from the top corners to pegs.</summary>
    /// <param name="Pegs">How many pegs [1].</param>
    public sealed record WithGuys(int Pegs) : StructuralChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => Changed(kit, frame => frame with { Pegs = frame.Pegs with { Count = Pegs, Guys = true } });
    }

    /// <summary>Another number of pegs.</summary>
    /// <param name="Pegs">How many [1].</param>
    public sealed record Pegged(int Pegs) : StructuralChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => Changed(kit, frame => frame with { Pegs = frame.Pegs with { Count = Pegs } });
    }

    /// <summary>Ballast under the middle.</summary>
    /// <param name="Hung">All that hangs there.</param>
    public sealed record Weighted(Mass Hung) : StructuralChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => Changed(kit, frame => frame with { Ballast = Hung });
    }

    /// <summary>Shade over frame and sheet.</summary>
    public sealed record Shaded : StructuralChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => kit with { Site = kit.Site with { SunWarming = TemperatureDelta.Zero } };
    }

    /// <summary>Elbows that lean less.</summary>
    /// <param name="Push">The most that one may push.</param>
    public sealed record LighterElbow(Force Push) : StructuralChange
    {
        /// <inheritdoc/>
        public override KitSpec Of(KitSpec kit) => kit with { Panel = kit.Panel with { ElbowLoad = Push } };
    }

    private static KitSpec Changed(KitSpec kit, Func<FrameSpec, FrameSpec> change) => kit with { Frame = change(kit.Frame) };
}
