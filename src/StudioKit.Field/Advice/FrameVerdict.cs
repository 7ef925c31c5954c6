namespace StudioKit.Field.Advice;

/// <summary>What a test frame comes to.</summary>
public enum FrameVerdict
{
    /// <summary>Background and subject cannot be told apart for sure.</summary>
    Doubtful,

    /// <summary>Part of the background is not white.</summary>
    NotWhite,

    /// <summary>White all over, and the subject's dark parts show that the veil is within its limit.</summary>
    Right,

    /// <summary>White all over; how far over clipping it lies, and how much it veils, the frame does not show: nothing on the subject is dark, or the veil lifts it.</summary>
    WhiteUnbounded,

    /// <summary>White all over, and the subject is white with it in part, or the plan says that the veil limit is passed.</summary>
    TooBright,
}
