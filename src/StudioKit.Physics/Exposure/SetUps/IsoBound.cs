namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>What bounds the ISO speed.</summary>
public enum IsoBound
{
    /// <summary>The camera's own range, or what the photographer accepts of it.</summary>
    Camera,

    /// <summary>Ambient light would show.</summary>
    Ambient,

    /// <summary>A flash at its highest power is too weak.</summary>
    FlashTooWeak,

    /// <summary>A flash at its lowest power is too strong.</summary>
    FlashTooStrong,
}
