using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Standing;
using UnitsNet;

namespace StudioKit.Planning.Changes;

/// <summary>One change of a kit, made to its value in memory; one of the forms below.</summary>
/// <remarks>What is advised is such a change, so that whoever doubts it can write it into the kit and plan again.</remarks>
public abstract partial record KitChange
{
    /// <summary>Key of the kit that it changes, as a path of sections.</summary>
    public abstract string Key { get; }

    /// <summary>Whether somebody makes it with their hands, other than by turning a dial: the dials follow from the plan.</summary>
    public virtual bool IsDoneByHand => false;

    /// <summary>The kit with the change.</summary>
    /// <param name="kit">The kit as it is.</param>
    public abstract KitSpec Apply(KitSpec kit);

    /// <summary>A change of one set-up.</summary>
    /// <param name="SetUp">Its name.</param>
    public abstract record OfSetUp(string SetUp) : KitChange
    {
        /// <inheritdoc/>
        public override string Key => $"set-ups.{Name}";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with { SetUps = [.. kit.SetUps.Select(setUp => setUp.Name == SetUp ? Changed(setUp) : setUp)] };
        }

        /// <summary>Name of the key within the set-up.</summary>
        protected abstract string Name { get; }

        /// <summary>The set-up with the change.</summary>
        protected abstract SetUpSpec Changed(SetUpSpec setUp);
    }

    /// <summary>A flash at another distance.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Light">Its place in the set-up's list of lights, from 0 [1].</param>
    /// <param name="Distance">The distance.</param>
    public sealed record Move(string SetUp, int Light, Length Distance) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => $"lights[{Light}].distance";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) =>
            setUp with { Lights = [.. setUp.Lights.Select((light, place) => place == Light ? light with { Distance = Distance } : light)] };
    }

    /// <summary>A flash below beside, before or beyond where it stood.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Light">Its place in the set-up's list of lights, from 0 [1].</param>
    /// <param name="Right">How far right of the panel's centre; none to leave it.</param>
    /// <param name="Back">How far beyond the panel's centre; none to leave it.</param>
    public sealed record Shift(string SetUp, int Light, Length? Right, Length? Back) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => Right is null ? $"lights[{Light}].offset-back" : $"lights[{Light}].offset-right";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { Lights = [.. setUp.Lights.Select((light, place) => place == Light ? Shifted(light) : light)] };

        private LightSpec Shifted(LightSpec light) => light with { OffsetRight = Right ?? light.OffsetRight, OffsetBack = Back ?? light.OffsetBack };
    }

    /// <summary>A light about the subject from another direction.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Light">Its place in the set-up's list of lights, from 0 [1].</param>
    /// <param name="From">The direction.</param>
    public sealed record Turn(string SetUp, int Light, LightDirection From) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => $"lights[{Light}].azimuth";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) =>
            setUp with { Lights = [.. setUp.Lights.Select((light, place) => place == Light ? light with { Azimuth = From.Azimuth, Elevation = From.Elevation } : light)] };
    }

    /// <summary>A light about the subject held by something else.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Light">Its place in the set-up's list of lights, from 0 [1].</param>
    /// <param name="Holder">Name of the holder; none for a free hand.</param>
    public sealed record Hold(string SetUp, int Light, string? Holder) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => $"lights[{Light}].holder";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) =>
            setUp with { Lights = [.. setUp.Lights.Select((light, place) => place == Light ? light with { Holder = Holder } : light)] };
    }

    /// <summary>Another angle of the camera in place of one of the set-up's.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Place">Place of the angle in the set-up's list, from 0 [1].</param>
    /// <param name="Angle">Line of sight under the horizontal.</param>
    public sealed record Pitch(string SetUp, int Place, Angle Angle) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => $"camera-pitch[{Place}]";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) =>
            setUp with { CameraPitches = [.. setUp.CameraPitches.Select((angle, place) => place == Place ? Angle : angle)] };
    }

    /// <summary>A sheet of another size.</summary>
    /// <param name="Width">Across the camera's view; none to leave it.</param>
    /// <param name="Depth">Along the camera's view; none to leave it.</param>
    public sealed record Sheet(Length? Width, Length? Depth) : KitChange
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        public override string Key => Width is null ? "panel.depth" : "panel.width";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with { Panel = kit.Panel with { Width = Width ?? kit.Panel.Width, Depth = Depth ?? kit.Panel.Depth } };
        }
    }

    /// <summary>Another dome, softbox or diffuser before a flash, or none.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Light">Its place in the set-up's list of lights, from 0 [1].</param>
    /// <param name="Modifier">Name of the modifier; none to take it off.</param>
    public sealed record Modify(string SetUp, int Light, string? Modifier) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => $"lights[{Light}].modifier";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) =>
            setUp with { Lights = [.. setUp.Lights.Select((light, place) => place == Light ? light with { Modifier = Modifier } : light)] };
    }

    /// <summary>A flash more.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Light">The flash, what it does and where.</param>
    public sealed record Add(string SetUp, LightSpec Light) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => "lights";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { Lights = [.. setUp.Lights, Light] };
    }

    /// <summary>A background nearer or further behind the subject.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Distance">Subject to background.</param>
    public sealed record Background(string SetUp, Length Distance) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => "background-distance";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { BackgroundDistance = Distance };
    }

    /// <summary>Another light of the place than the one planned for, by the hour or the cloud.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Light">The light.</param>
    public sealed record Ambient(string SetUp, ExposureValue Light) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        protected override string Name => "ambient";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => SceneLights.In(setUp, Light);
    }

    /// <summary>Shade over the place.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Light">The light that is left.</param>
    /// <param name="By">Stops that it takes away.</param>
    public sealed record Shade(string SetUp, ExposureValue Light, Stops By) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => "ambient";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => SceneLights.In(setUp, Light);
    }

    /// <summary>Another filter before the lens, or none.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Filter">Name of the filter; none to take it off.</param>
    public sealed record Before(string SetUp, string? Filter) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => "filter";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { Filter = Filter };
    }

    /// <summary>Another f-number.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="FNumber">The f-number.</param>
    public sealed record Aperture(string SetUp, FNumber FNumber) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        protected override string Name => "aperture";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { Aperture = FNumber };
    }

    /// <summary>Another shutter speed.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Speed">The speed.</param>
    public sealed record Shutter(string SetUp, ShutterSpeed Speed) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        protected override string Name => "shutter";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { Shutter = Speed };
    }

    /// <summary>Another ISO speed to stay near.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Speed">The speed.</param>
    public sealed record Iso(string SetUp, IsoSpeed Speed) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        protected override string Name => "iso";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { Iso = Speed };
    }

    /// <summary>Another white margin asked of the darkest visible point.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Margin">The margin.</param>
    public sealed record TargetMargin(string SetUp, Stops Margin) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        protected override string Name => "target-white-margin";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { TargetWhiteMargin = Margin };
    }

    /// <summary>Another level of the fill.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Level">Against the ambient light.</param>
    public sealed record FillLevel(string SetUp, Stops Level) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        protected override string Name => "fill-level";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { FillLevel = Level };
    }

    /// <summary>Another level of the rim light.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Level">Against the key light.</param>
    public sealed record RimLevel(string SetUp, Stops Level) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        protected override string Name => "rim-level";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { RimLevel = Level };
    }

    /// <summary>Another limit to how much the veil lifts a mid-tone.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Limit">The limit.</param>
    public sealed record VeilLimit(string SetUp, Stops Limit) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        protected override string Name => "veil-limit";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { VeilLimit = Limit };
    }

    /// <summary>A flash that gives more or less light than its guide number says, as the frame shows.</summary>
    /// <param name="Flash">Its name.</param>
    /// <param name="By">Stops more; negative less.</param>
    public sealed record Gives(string Flash, Stops By) : KitChange
    {
        /// <inheritdoc/>
        public override string Key => "flashes.guide-number";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with
            {
                Flashes =
                [
                    .. kit.Flashes.Select(flash => flash.Name == Flash
                        ? flash with { GuideNumber = Scaled(flash.GuideNumber), Zooms = [.. flash.Zooms.Select(Scaled)] }
                        : flash),
                ],
            };
        }

        // Light goes by the square of the guide number.
        private GuideNumber Scaled(GuideNumber number) => new(number.AtIso100 * Math.Sqrt(By.Ratio), number.Zoom);
    }

    /// <summary>A camera that rests on something else.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Support">Name of what it rests on.</param>
    public sealed record Rest(string SetUp, string Support) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => "support";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { Support = Support };
    }
}
