namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>A subject in dusk or shade, drawn by available light with flash as fill.</summary>
public sealed record LowLightFillCase : SetUpCase
{
    /// <summary>How the available light is rendered against its metered exposure.</summary>
    public Stops AmbientLevel { get; init; }

    /// <summary>Level of all flashes together against correct exposure; −1/3 to −2 stops in practice.</summary>
    public Stops FillLevel { get; init; } = new(-1);
}
