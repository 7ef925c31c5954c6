using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>A bag to pack.</summary>
/// <param name="Name">Name; unique.</param>
/// <param name="Inside">Inside measures.</param>
/// <param name="Mass">Mass of the empty bag; ≥ 0.</param>
/// <param name="HighestLoad">Greatest mass with the bag's own; none where it was not given.</param>
/// <param name="Carrier">Name of the person who carries it; none where it was not given.</param>
public sealed record CarryingBag(string Name, BoxSize Inside, Mass Mass, Mass? HighestLoad = null, string? Carrier = null);
