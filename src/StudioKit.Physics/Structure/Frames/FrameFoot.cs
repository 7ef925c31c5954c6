using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>A foot on a screw through a leg's cap.</summary>
/// <param name="Joint">Label of the cap.</param>
/// <param name="Position">Where it stands on level ground.</param>
/// <param name="LevelExtension">Cap floor to ground on level ground.</param>
/// <param name="ShortestExtension">Shortest setting that the slope asks for.</param>
/// <param name="LongestExtension">Longest setting that the slope asks for.</param>
public sealed record FrameFoot(
    string Joint, FramePoint Position, Length LevelExtension, Length ShortestExtension, Length LongestExtension);
