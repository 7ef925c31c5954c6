namespace StudioKit.Planning.Packing;

/// <summary>Parts of the studio that is built from the plan.</summary>
public enum StudioPart
{
    /// <summary>Pipes and fittings.</summary>
    Frame,

    /// <summary>Strips of pad or ledge on the rails, which travel on their pipes.</summary>
    Rests,

    /// <summary>The translucent sheet.</summary>
    Panel,

    /// <summary>Cloths that close the space under it.</summary>
    Skirts,

    /// <summary>A sheet that stands behind a subject.</summary>
    UprightSheet,

    /// <summary>Poles, feet, bar, cords and pegs of such a sheet.</summary>
    UprightPoles,

    /// <summary>Pins, feet, clips, pegs, cords and what else is small, and the tools that are needed where it stands.</summary>
    Hardware,
}
