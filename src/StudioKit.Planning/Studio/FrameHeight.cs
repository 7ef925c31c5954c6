using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>A height that somebody who builds a frame measures off.</summary>
/// <param name="Kind">Of what.</param>
/// <param name="Height">Level ground to it: to the middle of a rail, to a cap's floor, to a flash's window, to the panel's underside.</param>
/// <param name="Parts">Labels of the pieces that lie there; empty where it is none's.</param>
public sealed record FrameHeight(FrameHeightKind Kind, Length Height, ValueList<string> Parts);
