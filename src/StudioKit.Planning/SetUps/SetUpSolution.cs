using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.SetUps;

/// <summary>What came of solving a set-up at a framing.</summary>
/// <param name="Result">Settings, levels, and the limit in the way where there is one.</param>
/// <param name="Changes">Looks for the cheapest changes that would make it work; asked only where it does not.</param>
internal sealed record SetUpSolution(SetUpResult Result, Func<IReadOnlyList<SetUpChange>> Changes)
{
    /// <summary>Changes looked for where a set-up does not work.</summary>
    public const int MostChanges = 3;
}
