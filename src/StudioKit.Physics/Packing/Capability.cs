namespace StudioKit.Physics.Packing;

/// <summary>Something that the pack makes possible, such as a framing or a set-up.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Loss">What is lost without it [1]; ≥ 0.</param>
/// <param name="Needs">Names of the things that it cannot do without.</param>
public sealed record Capability(string Name, double Loss, IReadOnlyList<string> Needs);
