using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>A pipe of the frame in the side view.</summary>
/// <param name="From">One end of its centre line.</param>
/// <param name="To">The other end; the same point where the pipe runs across the view.</param>
/// <param name="Diameter">Outside diameter.</param>
public sealed record SidePipe(SidePoint From, SidePoint To, Length Diameter);
