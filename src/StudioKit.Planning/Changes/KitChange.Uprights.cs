using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Uprights;
using UnitsNet;

namespace StudioKit.Planning.Changes;

/// <content>Changes of sheets that stand behind subjects.</content>
public abstract partial record KitChange
{
    /// <summary>A sheet that stands behind the subject on the panel, with a flash behind it.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Screen">Name of the upright sheet; it joins the kit, carried by the frame, where the kit has none of that name.</param>
    /// <param name="Light">The flash behind it.</param>
    /// <param name="Distance">Subject to sheet.</param>
    public sealed record BeforeSheet(string SetUp, string Screen, LightSpec Light, Length Distance) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        protected override string Name => "upright";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            var changed = base.Apply(kit);
            return changed.Uprights.Any(upright => upright.Name == Screen)
                ? changed
                : changed with { Uprights = [.. changed.Uprights, new UprightSpec { Name = Screen, Carrier = UprightCarrier.Frame }] };
        }

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { Upright = Screen, BackgroundDistance = Distance, Lights = [.. setUp.Lights, Light] };
    }

    /// <summary>An upright sheet of another size; a mass as weighed is that of the old one and goes.</summary>
    /// <param name="Screen">Its name.</param>
    /// <param name="Width">Across the camera's view.</param>
    /// <param name="Height">From its lower to its upper edge.</param>
    public sealed record RecutUpright(string Screen, Length Width, Length Height) : KitChange
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        public override string Key => "uprights.width";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit) => Changed(kit, Screen, upright => upright with { Width = Width, Height = Height, Sheet = upright.Sheet with { Mass = null } });
    }

    /// <summary>An upright sheet that stands as low as it goes.</summary>
    /// <param name="Screen">Its name.</param>
    public sealed record LowerUpright(string Screen) : KitChange
    {
        /// <inheritdoc/>
        public override string Key => "uprights.over-ground";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit) => Changed(kit, Screen, upright => upright.Lowest());
    }

    /// <summary>A flash behind an upright sheet at another height.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Light">Its place in the set-up's list of lights, from 0 [1].</param>
    /// <param name="Up">Over the level of the subject.</param>
    public sealed record LiftFlash(string SetUp, int Light, Length Up) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => $"lights[{Light}].offset-up";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { Lights = [.. setUp.Lights.Select((light, place) => place == Light ? light with { OffsetUp = Up } : light)] };
    }

    private static KitSpec Changed(KitSpec kit, string screen, Func<UprightSpec, UprightSpec> change)
    {
        ArgumentNullException.ThrowIfNull(kit);
        return kit with { Uprights = [.. kit.Uprights.Select(upright => upright.Name == screen ? change(upright) : upright)] };
    }
}
