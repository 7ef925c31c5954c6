using StudioKit.Kits.Exploring;

namespace StudioKit.Planning.Exploring;

/// <summary>The best that a measure comes to.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Amount">The amount, in the measure's unit; none where no design that stands has one.</param>
public sealed record BestFigure(DesignMeasure Measure, double? Amount);
