using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>How far a foot is turned out on the ground that the kit describes.</summary>
/// <param name="Joint">Label of the leg's cap.</param>
/// <param name="Extension">Cap floor to ground.</param>
/// <param name="InReach">Whether the foot's screw reaches that far.</param>
public sealed record FootSetting(string Joint, Length Extension, bool InReach);
