using StudioKit.Physics.Structure.Frames;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Solids;

/// <summary>A part as it is drawn, with the upright box that it fills.</summary>
/// <param name="Low">The box's left, front, lower corner [m].</param>
/// <param name="High">Its right, back, upper corner [m].</param>
/// <param name="Marks">What is drawn, far things first.</param>
internal sealed record Solid(FramePoint Low, FramePoint High, IReadOnlyList<Primitive> Marks);
