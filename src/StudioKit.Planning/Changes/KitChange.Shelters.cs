using StudioKit.Kits.SetUps;

namespace StudioKit.Planning.Changes;

/// <content>Changes of what is put up against sun and wind.</content>
public abstract partial record KitChange
{
    /// <summary>Something of the kit put up.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Shelter">Its name.</param>
    public sealed record PutUp(string SetUp, string Shelter) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => "shelters";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { Shelters = [.. setUp.Shelters, Shelter] };
    }

    /// <summary>Something else of the kit put up.</summary>
    /// <param name="SetUp">The set-up.</param>
    /// <param name="Shelter">Name of what stays in the bag.</param>
    /// <param name="Instead">Name of what is put up.</param>
    public sealed record PutUpInstead(string SetUp, string Shelter, string Instead) : OfSetUp(SetUp)
    {
        /// <inheritdoc/>
        public override bool IsDoneByHand => true;

        /// <inheritdoc/>
        protected override string Name => "shelters";

        /// <inheritdoc/>
        protected override SetUpSpec Changed(SetUpSpec setUp) => setUp with { Shelters = [.. setUp.Shelters.Select(name => name == Shelter ? Instead : name).Distinct(StringComparer.Ordinal)] };
    }
}
