namespace StudioKit.Field.Analysis;

/// <summary>What a block of a frame shows.</summary>
public enum FrameArea
{
    /// <summary>Edge of the subject, where background and subject mix; counted as neither.</summary>
    Outline,

    /// <summary>The panel or whatever else lies behind the subject.</summary>
    Background,

    /// <summary>The subject.</summary>
    Subject,
}
