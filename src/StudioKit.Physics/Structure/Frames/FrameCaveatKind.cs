namespace StudioKit.Physics.Structure.Frames;

/// <summary>What the builder of a frame should know.</summary>
public enum FrameCaveatKind
{
    /// <summary>The panel lies at the size given over the ground in place of the one asked for, as there is no room for legs.</summary>
    WithoutLegs,

    /// <summary>The slope asks the feet for travel of the size given, more than the one they have.</summary>
    SlopeBeyondFeet,

    /// <summary>Without legs the frame follows the slope of the ground.</summary>
    FollowsSlope,

    /// <summary>A low frame carries no flash; its window is to stand at the size given over the ground.</summary>
    FlashOnGround,

    /// <summary>Take-offs differ from maker to maker.</summary>
    TakeOffs,
}
