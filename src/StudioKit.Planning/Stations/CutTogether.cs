using StudioKit.Physics;

namespace StudioKit.Planning.Stations;

/// <summary>A material that several stations are cut from.</summary>
/// <param name="Material">Name of the pipe or of the sheet.</param>
/// <param name="Stations">Names of the kits.</param>
/// <param name="Apart">What each for itself comes to, all of them added up.</param>
/// <param name="Together">What one cut plan for all comes to; never more than apart.</param>
/// <param name="IsProven">Whether no other plan for all costs less.</param>
public sealed record CutTogether(string Material, ValueList<string> Stations, StockTaken Apart, StockTaken Together, bool IsProven);
