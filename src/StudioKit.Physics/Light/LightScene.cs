namespace StudioKit.Physics.Light;

/// <summary>Everything that decides how much light reaches the underside of the panel; equal where all of it is.</summary>
public sealed record LightScene
{
    /// <summary>The sheet.</summary>
    public required LightPanel Panel { get; init; }

    /// <summary>Ground, skirts and frame.</summary>
    public LightSurround Surround { get; init; } = new();

    /// <summary>The flashes at work.</summary>
    public required ValueList<Emitter> Emitters { get; init; }
}
