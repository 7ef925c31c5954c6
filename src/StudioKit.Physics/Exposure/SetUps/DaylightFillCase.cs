namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>A subject against its daylit habitat, with flashes lifted to just under the daylight.</summary>
public sealed record DaylightFillCase : SetUpCase
{
    /// <summary>How the habitat is rendered against its metered exposure.</summary>
    public Stops BackgroundLevel { get; init; }

    /// <summary>Daylight on the subject's side towards the camera against that of the habitat; it lies in its own shade.</summary>
    public Stops SubjectShade { get; init; } = new(-1);

    /// <summary>
    /// Level of all flashes together against correct exposure; just under the daylight, so that flash does not show.
    /// </summary>
    public Stops FillLevel { get; init; } = new(-1.0 / 3);
}
