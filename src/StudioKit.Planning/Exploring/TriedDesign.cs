using StudioKit.Physics;

namespace StudioKit.Planning.Exploring;

/// <summary>A design that was planned.</summary>
/// <param name="Code">The design.</param>
/// <param name="Verdict">What became of it.</param>
/// <param name="Figures">Its measures; none where it cannot be.</param>
/// <param name="Failing">Checks that its plan fails.</param>
/// <param name="Why">What the kit's reader says first where it cannot be; none otherwise.</param>
public sealed record TriedDesign(DesignCode Code, DesignVerdict Verdict, DesignFigures? Figures, ValueList<FailedCheck> Failing, string? Why);
