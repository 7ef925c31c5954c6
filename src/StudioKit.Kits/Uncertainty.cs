namespace StudioKit.Kits;

/// <summary>How far off a value of the kit may be, as written after <c>±</c>.</summary>
/// <param name="Amount">Half the width of the interval; its unit follows from <paramref name="Kind"/>; ≥ 0.</param>
/// <param name="Kind">How the amount is counted.</param>
/// <param name="Text">The amount as written, for the sheets.</param>
public sealed record Uncertainty(double Amount, UncertaintyKind Kind, string Text);
