namespace StudioKit.Physics.Light.Covers;

/// <summary>A part of a cover that light passes or is thrown back by, as the camera sees it.</summary>
public enum CoverFace
{
    /// <summary>The wall towards the camera.</summary>
    Front,

    /// <summary>The wall away from it.</summary>
    Back,

    /// <summary>The wall on the left.</summary>
    Left,

    /// <summary>The wall on the right.</summary>
    Right,

    /// <summary>The flat top of a tub.</summary>
    Top,

    /// <summary>The round wall of a tub, or a dome.</summary>
    Round,

    /// <summary>The surface of the water in a tank.</summary>
    Water,
}
