namespace StudioKit.Physics.Optics;

/// <summary>How far what is assumed of a lens is moved from its usual value, in standard deviations [1].</summary>
/// <param name="Barrel">Front glass to mount.</param>
/// <param name="Hiatus">Separation of the principal planes.</param>
/// <param name="PupilRatio">Exit over entrance pupil diameter.</param>
/// <param name="ClosestFocus">Subject to sensor at closest focus.</param>
internal readonly record struct LensShift(double Barrel, double Hiatus, double PupilRatio, double ClosestFocus)
{
    /// <summary>One assumption at a time, either way.</summary>
    public static IReadOnlyList<(LensShift Less, LensShift More)> OneByOne { get; } =
    [
        (new(-1, 0, 0, 0), new(1, 0, 0, 0)),
        (new(0, -1, 0, 0), new(0, 1, 0, 0)),
        (new(0, 0, -1, 0), new(0, 0, 1, 0)),
        (new(0, 0, 0, -1), new(0, 0, 0, 1)),
    ];
}
