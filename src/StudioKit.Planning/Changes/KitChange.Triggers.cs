using StudioKit.Kits;
using StudioKit.Kits.SetUps;

namespace StudioKit.Planning.Changes;

/// <content>Changes of what fires the flashes.</content>
public abstract partial record KitChange
{
    /// <summary>A flash fired by something else.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Light">Its place in the set-up's list of lights, from 0 [1].</param>
    /// <param name="Trigger">Name of the trigger.</param>
    public sealed record Fire(string SetUp, int Light, string Trigger) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => $"lights[{Light}].trigger";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) =>
            setUp with { Lights = [.. setUp.Lights.Select((light, place) => place == Light ? light with { Trigger = Trigger } : light)] };
    }

    /// <summary>A flash in another group of the radio.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Light">Its place in the set-up's list of lights, from 0 [1].</param>
    /// <param name="Group">Letter of the group.</param>
    public sealed record Regroup(string SetUp, int Light, string Group) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => $"lights[{Light}].group";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) =>
            setUp with { Lights = [.. setUp.Lights.Select((light, place) => place == Light ? light with { Group = Group } : light)] };
    }

    /// <summary>A radio on another channel.</summary>
    /// <param name="Trigger">Its name.</param>
    /// <param name="Channel">The channel [1].</param>
    public sealed record Tune(string Trigger, int Channel) : KitChange
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        public override string Key => "triggers.channel";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with { Triggers = [.. kit.Triggers.Select(trigger => trigger.Name == Trigger ? trigger with { Channel = Channel } : trigger)] };
        }
    }

    /// <summary>More of a trigger carried.</summary>
    /// <param name="Trigger">Its name.</param>
    /// <param name="Count">How many [1].</param>
    public sealed record CarryTriggers(string Trigger, int Count) : KitChange
    {
        /// <inheritdoc/>
        public override string Key => "triggers.count";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with { Triggers = [.. kit.Triggers.Select(trigger => trigger.Name == Trigger ? trigger with { Count = Count } : trigger)] };
        }
    }
}
