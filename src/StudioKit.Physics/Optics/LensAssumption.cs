namespace StudioKit.Physics.Optics;

/// <summary>Something assumed of a lens.</summary>
/// <param name="Kind">What it is, which also says the unit.</param>
/// <param name="Value">Value taken.</param>
/// <param name="Uncertainty">One standard deviation of it, in the same unit; ≥ 0.</param>
public readonly record struct LensAssumption(LensAssumptionKind Kind, double Value, double Uncertainty);
