namespace StudioKit.Physics.Daylight;

/// <summary>What the light of the day comes through.</summary>
public enum SkyState
{
    /// <summary>The sun from a sky that is clear or under seven tenths clouded.</summary>
    Sun,

    /// <summary>A sky clouded over.</summary>
    Cloud,

    /// <summary>A clear sky all around, and the sun kept off.</summary>
    Shade,
}
