namespace StudioKit.Kits.Exploring;

/// <summary>How far a measure of a design may go on its worse side.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Amount">The limit: grams, price, stops, a share of 1, flashes, watt-hours, millimetres, pieces, micrometres of smear, millimetres of depth, metres per second or cards, by the measure.</param>
/// <param name="Text">As it was written.</param>
public sealed record DesignLimit(DesignMeasure Measure, double Amount, string Text);
