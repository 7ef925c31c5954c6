using StudioKit.Kits;
using StudioKit.Kits.SetUps;

namespace StudioKit.Planning.Changes;

/// <content>Changes of what is turned over an animal.</content>
public abstract partial record KitChange
{
    /// <summary>Another cover over the animals of a set-up.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Cover">Name of the cover.</param>
    public sealed record UnderCover(string SetUp, string Cover) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => "cover";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { Cover = Cover };
    }

    /// <summary>A cover that is lifted for the picture.</summary>
    /// <param name="Cover">Name of the cover.</param>
    public sealed record Lift(string Cover) : KitChange
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        public override string Key => "covers.lifted";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with { Covers = [.. kit.Covers.Select(cover => cover.Name == Cover ? cover with { Lifted = true } : cover)] };
        }
    }
}
