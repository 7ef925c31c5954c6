using StudioKit.Kits;
using StudioKit.Kits.Cameras;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Studio;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning.Changes;

/// <content>Changes of what is built, carried and planned for the day, made at home and not at the animal.</content>
public abstract partial record KitChange
{
    /// <summary>A panel of another size; masses as weighed are those of the old one and its frame and go.</summary>
    /// <param name="Width">Across the camera's view; none to leave it.</param>
    /// <param name="Depth">Along the camera's view; none to leave it.</param>
    public sealed record Recut(Length? Width, Length? Depth) : KitChange
    {
        /// <inheritdoc/>
        public override string Key => Width is null ? "panel.depth" : "panel.width";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with
            {
                Panel = kit.Panel with { Width = Width ?? kit.Panel.Width, Depth = Depth ?? kit.Panel.Depth, Mass = null },
                Frame = kit.Frame with { Mass = null },
            };
        }
    }

    /// <summary>A change that a structural check was planned with.</summary>
    /// <param name="Change">The change.</param>
    public sealed record Strengthen(StructuralChange Change) : KitChange
    {
        /// <inheritdoc/>
        public override string Key => Change switch
        {
            StructuralChange.AllEdgesRest => "frame.panel-rests",
            StructuralChange.OtherSheet => "panel.thickness",
            StructuralChange.OtherSweep => "panel.sweep-radius",
            StructuralChange.EdgeRoom => "frame.edge-clearance",
            StructuralChange.OtherPipe => "frame.pipe",
            StructuralChange.Stretched => "frame.stretchers",
            StructuralChange.WithGuys => "frame.pegs.guys",
            StructuralChange.Pegged => "frame.pegs.count",
            StructuralChange.Weighted => "frame.ballast",
            StructuralChange.Shaded => "site.sun-warming",
            StructuralChange.LighterElbow => "panel.elbow-load",
            _ => throw new InvalidOperationException($"No key is known for {Change}."),
        };

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit) => Change.Of(kit);
    }

    /// <summary>A frame of another height; a mass as weighed is that of the old one and goes.</summary>
    /// <param name="Height">Ground to the panel's underside.</param>
    public sealed record FrameHeight(Length Height) : KitChange
    {
        /// <inheritdoc/>
        public override string Key => "frame.height";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with { Frame = kit.Frame with { Height = Height, Mass = null } };
        }
    }

    /// <summary>A frame of another shape; a mass as weighed is that of the old one and goes.</summary>
    /// <param name="Kind">The shape.</param>
    public sealed record FrameShape(FrameKind Kind) : KitChange
    {
        /// <inheritdoc/>
        public override string Key => "frame.kind";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with { Frame = kit.Frame with { Kind = Kind, Mass = null } };
        }
    }

    /// <summary>Another length up to which the frame's pieces may go undivided.</summary>
    /// <param name="Length">The length.</param>
    public sealed record PieceLength(Length Length) : KitChange
    {
        /// <inheritdoc/>
        public override string Key => "frame.longest-piece";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with { Frame = kit.Frame with { LongestPiece = Length } };
        }
    }

    /// <summary>Another magnification in place of one that is wanted of a lens, or none in its place.</summary>
    /// <param name="Lens">Name of the lens.</param>
    /// <param name="Place">Place of the magnification in the lens's list, from 0 [1].</param>
    /// <param name="To">The magnification; none to do without.</param>
    public sealed record Magnify(string Lens, int Place, Magnification? To) : KitChange
    {
        /// <inheritdoc/>
        public override string Key => "lenses.magnifications";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with { Lenses = [.. kit.Lenses.Select(lens => lens.Name == Lens ? Changed(lens) : lens)] };
        }

        private LensSpec Changed(LensSpec lens) => lens with
        {
            Magnifications = [.. lens.Magnifications.Select((wanted, place) => place == Place ? To : wanted).OfType<Magnification>()],
        };
    }

    /// <summary>A flash below that shines straight up from where it stands.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Light">Its place in the set-up's list of lights, from 0 [1].</param>
    public sealed record Upright(string SetUp, int Light) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => $"lights[{Light}].tilt";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with
        {
            Lights = [.. setUp.Lights.Select((light, place) => place == Light ? light with { Tilt = Angle.Zero, AimRight = null, AimBack = null } : light)],
        };
    }

    /// <summary>A flash that is zoomed to another setting, wherever the kit uses it.</summary>
    /// <param name="Flash">Its name.</param>
    /// <param name="To">The setting.</param>
    public sealed record Zoom(string Flash, Length To) : KitChange
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        public override string Key => "flashes.zoom";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with
            {
                Flashes = [.. kit.Flashes.Select(flash => flash.Name == Flash ? flash with { Zoom = To } : flash)],
                SetUps = [.. kit.SetUps.Select(setUp => setUp with { Lights = [.. setUp.Lights.Select(light => light.Flash == Flash && light.Zoom is not null ? light with { Zoom = To } : light)] })],
            };
        }
    }

    /// <summary>Other spare sets of cells for a flash.</summary>
    /// <param name="Flash">Its name.</param>
    /// <param name="Sets">How many [1].</param>
    public sealed record SpareSets(string Flash, int Sets) : KitChange
    {
        /// <inheritdoc/>
        public override string Key => "flashes.spare-sets";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with { Flashes = [.. kit.Flashes.Select(flash => flash.Name == Flash ? flash with { SpareSets = Sets } : flash)] };
        }
    }

    /// <summary>Another number of frames of a subject.</summary>
    /// <param name="Subject">Its name.</param>
    /// <param name="Count">How many [1].</param>
    public sealed record Frames(string Subject, int Count) : KitChange
    {
        /// <inheritdoc/>
        public override string Key => "subjects.frames";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with { Subjects = [.. kit.Subjects.Select(subject => subject.Name == Subject ? subject with { Frames = Count } : subject)] };
        }
    }

    /// <summary>Another number of rounds in a day.</summary>
    /// <param name="Count">How many [1].</param>
    public sealed record Rounds(int Count) : KitChange
    {
        /// <inheritdoc/>
        public override string Key => "session.rounds";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with { Session = kit.Session with { Rounds = Count } };
        }
    }
}
