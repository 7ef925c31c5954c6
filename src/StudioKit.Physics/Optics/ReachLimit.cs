using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>Why a magnification is out of reach.</summary>
/// <param name="Kind">What keeps it out of reach.</param>
/// <param name="Wanted">The magnification asked for.</param>
/// <param name="Nearest">The magnification nearest to it that anything on hand reaches; none where nothing comes to a focus.</param>
/// <param name="LeastExtension">Least extension by tubes alone that would reach it, with the lens at its closest focus; zero where none would.</param>
public sealed record ReachLimit(ReachLimitKind Kind, Magnification Wanted, Magnification? Nearest, Length LeastExtension);
