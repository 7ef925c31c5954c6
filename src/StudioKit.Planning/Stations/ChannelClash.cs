using StudioKit.Physics;

namespace StudioKit.Planning.Stations;

/// <summary>A radio channel that several stations use.</summary>
/// <param name="Channel">The channel.</param>
/// <param name="Stations">Names of the kits.</param>
/// <param name="Free">A channel for each station after the first, none of which another uses.</param>
public sealed record ChannelClash(int Channel, ValueList<string> Stations, ValueList<int> Free);
