using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>Sizes of one fitting.</summary>
/// <param name="TakeOff">Centre of the fitting to the bottom of its socket; ≥ 0.</param>
/// <param name="SocketDepth">Depth of its socket; &gt; 0.</param>
/// <param name="Mass">Mass of one; ≥ 0.</param>
public sealed record Fitting(Length TakeOff, Length SocketDepth, Mass Mass);
