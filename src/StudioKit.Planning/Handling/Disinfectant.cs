using StudioKit.Kits.Subjects;
using UnitsNet;

namespace StudioKit.Planning.Handling;

/// <summary>A disinfectant as a source tried it.</summary>
/// <param name="Agent">What it is.</param>
/// <param name="Strength">How strong, a share of the whole [1]; above 0, at most 1.</param>
/// <param name="ContactTime">How long it stayed wet at the least.</param>
public sealed record Disinfectant(DisinfectantAgent Agent, double Strength, Duration ContactTime);
