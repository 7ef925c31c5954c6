namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>Settings found for a set-up, the levels they give, and the limit in the way where there is one.</summary>
public sealed record SetUpResult
{
    /// <summary>Camera and lens as they are to be set.</summary>
    public required CameraCase Camera { get; init; }

    /// <summary>The flashes, the one below first.</summary>
    public required IReadOnlyList<LightSolution> Lights { get; init; }

    /// <summary>Ambient light on the background against its metered exposure.</summary>
    public required Stops AmbientLevel { get; init; }

    /// <summary>Ambient light on the subject's side towards the camera against that on the background.</summary>
    public Stops SubjectShade { get; init; }

    /// <summary>Ambient light on the subject against correct exposure.</summary>
    public Stops SubjectAmbientLevel => AmbientLevel + SubjectShade;

    /// <summary>All light on the subject against correct exposure, without rim lights.</summary>
    public required Stops SubjectLevel { get; init; }

    /// <summary>Price of the ISO speed in noise: stops above the camera's lowest.</summary>
    public required Stops IsoAboveBase { get; init; }

    /// <summary>White margin at the darkest visible point; white background only.</summary>
    public Stops? WhiteMargin { get; init; }

    /// <summary>White margin at the brightest visible point; white background only.</summary>
    public Stops? BrightestMargin { get; init; }

    /// <summary>White margin above which the veil passes its limit; white background only.</summary>
    public Stops? HighestMargin { get; init; }

    /// <summary>Lift of a mid-tone by the veil; white background only.</summary>
    public Stops? Veil { get; init; }

    /// <summary>Daylight and flash together on the background against correct exposure; dark background only.</summary>
    public Stops? BackgroundLevel { get; init; }

    /// <summary>Limits in the way, the one that binds first; empty where the settings work.</summary>
    public ValueList<MissedLimit> Missed { get; init; } = [];

    /// <summary>What a sheet must say beside the settings.</summary>
    public IReadOnlyList<string> Caveats { get; init; } = [];

    /// <summary>Whether every limit is met.</summary>
    public bool Works => Missed.Count == 0;
}
