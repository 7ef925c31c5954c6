namespace StudioKit.Physics.Light.Covers;

/// <summary>What a clear cover is like.</summary>
public enum CoverShape
{
    /// <summary>Flat walls and a flat top, turned over the animal.</summary>
    Tub,

    /// <summary>A round wall and a flat top, turned over the animal.</summary>
    RoundTub,

    /// <summary>A cap of a sphere over the animal.</summary>
    Dome,

    /// <summary>Flat walls, open above, with water in it.</summary>
    Tank,
}
