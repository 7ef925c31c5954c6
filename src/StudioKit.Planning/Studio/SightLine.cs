using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>What the camera looks along, in the side view.</summary>
/// <param name="Pupil">Entrance pupil, the point from which the camera looks.</param>
/// <param name="Aim">Point over the subject's foot that the line of sight goes through.</param>
/// <param name="Nearest">Nearest point of the panel in the frame; none where the frame misses the panel.</param>
/// <param name="Farthest">Farthest point of the panel in the frame.</param>
public sealed record SightLine(SidePoint Pupil, SidePoint Aim, SidePoint? Nearest, SidePoint? Farthest)
{
    /// <summary>Entrance pupil to the point over the subject's foot.</summary>
    public Length PupilDistance => Length.FromMillimeters(double.Hypot((Aim.FromFront - Pupil.FromFront).Millimeters, (Aim.Up - Pupil.Up).Millimeters));
}
