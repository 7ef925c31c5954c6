namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>A subject against its daylit habitat, with flashes lifted to just under the daylight.</summary>
public sealed record DaylightFillCase : SetUpCase
{
    /// <summary>What a subject in daylight loses by its own shade on the side towards the camera (common practice, no source).</summary>
    public static readonly Stops OwnShade = new(-1);

    /// <summary>A subject that lies in its own shade.</summary>
    public DaylightFillCase() => SubjectShade = OwnShade;

    /// <summary>How the habitat is rendered against its metered exposure.</summary>
    public Stops BackgroundLevel { get; init; }

    /// <summary>
    /// Level of all flashes together against correct exposure; just under the daylight, so that flash does not show.
    /// </summary>
    public Stops FillLevel { get; init; } = new(-1.0 / 3);
}
