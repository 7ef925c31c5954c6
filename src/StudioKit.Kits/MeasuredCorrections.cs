using StudioKit.Physics;

namespace StudioKit.Kits;

/// <summary>Corrections that were measured for a kit and are kept beside it.</summary>
/// <param name="Date">Day of the measurement.</param>
/// <param name="Values">The corrected figures.</param>
/// <param name="DisagreeingReadings">Readings that disagreed with the others, by name.</param>
/// <param name="Text">Text of the file they come from, which counts as content of the kit.</param>
public sealed record MeasuredCorrections(
    DateOnly Date, ValueList<MeasuredCorrection> Values, ValueList<string> DisagreeingReadings, string Text);
