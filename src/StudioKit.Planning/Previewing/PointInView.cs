using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Previewing;

/// <summary>A place of the panel as one camera angle has it.</summary>
/// <param name="Pitch">Angle of the line of sight under the horizontal.</param>
/// <param name="Roll">Turn of the camera about its line of sight.</param>
/// <param name="IsSeen">Whether it lies in the frame.</param>
/// <param name="Margin">Its white margin at the planned power, seen from there whether in the frame or not.</param>
public sealed record PointInView(Angle Pitch, Angle Roll, bool IsSeen, Stops Margin);
