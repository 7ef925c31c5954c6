using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>How a cell may fly, by which rule.</summary>
/// <param name="Class">How it may fly.</param>
/// <param name="Energy">Energy of one.</param>
/// <param name="Rule">The rule in a sentence.</param>
/// <param name="AsOf">Date of the rule as far as it is known.</param>
/// <param name="SourceKey">Key in the bibliography.</param>
public sealed record AirCellRule(AirCellClass Class, Energy Energy, string Rule, string AsOf, string SourceKey)
{
    /// <summary>What every traveller must do all the same.</summary>
    public static string Guidance => "Rules differ and change: check your carrier before you fly.";
}
