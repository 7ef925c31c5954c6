namespace StudioKit.Physics.Light.Covers;

/// <summary>Where a straight line goes through a cover.</summary>
/// <param name="Face">Which part of it.</param>
/// <param name="At">The place.</param>
/// <param name="Incidence">Angle from the face's normal [rad].</param>
public readonly record struct CoverCrossing(CoverFace Face, Position At, double Incidence);
