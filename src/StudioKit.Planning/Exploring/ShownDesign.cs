using StudioKit.Physics;

namespace StudioKit.Planning.Exploring;

/// <summary>A design that no other of those tried beats.</summary>
/// <param name="Number">Its number among those shown, from 1 [1].</param>
/// <param name="Code">The design.</param>
/// <param name="Figures">Its measures.</param>
/// <param name="Changes">What differs from the kit as it is written.</param>
/// <param name="Alike">Others of the same measures, with as many changes or more.</param>
/// <param name="IsClosed">Whether every design that differs from it in a single choice was tried; none of those beats it.</param>
public sealed record ShownDesign(int Number, DesignCode Code, DesignFigures Figures, ValueList<DesignDifference> Changes, ValueList<DesignCode> Alike, bool IsClosed);
