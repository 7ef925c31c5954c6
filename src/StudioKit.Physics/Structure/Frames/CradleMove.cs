using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>A move after which a frame carries a flash that it refused.</summary>
/// <param name="Kind">Which way.</param>
/// <param name="By">How far, in whole millimetres.</param>
public sealed record CradleMove(CradleMoveKind Kind, Length By);
