namespace StudioKit.Physics.Structure.Frames;

/// <summary>When lower stretchers tie the legs.</summary>
public enum FrameStretchers
{
    /// <summary>Where the frame would lean more than a hundredth of its height under a nudge of 10 N.</summary>
    WhereNeeded,

    /// <summary>Always.</summary>
    Always,

    /// <summary>Only those that carry flash cradles.</summary>
    Never,
}
