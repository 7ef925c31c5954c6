using StudioKit.Kits.Triggers;

namespace StudioKit.Planning;

/// <summary>How one flash of an exposure is fired.</summary>
/// <param name="Trigger">Name of what fires it.</param>
/// <param name="Kind">What that is.</param>
/// <param name="Sender">Name of the radio on the camera; none where none is needed, or the kit has none.</param>
/// <param name="Channel">Channel that its radio is set to; none where no radio fires it, or none is known.</param>
/// <param name="Group">Letter of its group; none where no radio that tells groups apart fires it.</param>
public sealed record FiringPlan(string Trigger, TriggerKind Kind, string? Sender, int? Channel, string? Group);
