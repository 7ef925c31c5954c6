using StudioKit.Field.Scale;

namespace StudioKit.FieldFiles.Scale;

/// <summary>One picture to put a scale bar on.</summary>
/// <param name="Source">Picture to read; never changed.</param>
/// <param name="Target">Copy to write.</param>
/// <param name="Scale">Its scale, and what that was worked out from.</param>
/// <param name="Corner">Corner that the bar goes to.</param>
public sealed record ScaleJob(string Source, string Target, PictureScale Scale, ScaleBarCorner Corner = ScaleBarCorner.BottomRight)
{
    /// <summary>Sidecar of the copy to write, by what lies beside the target when the job is made.</summary>
    public string Sidecar { get; } = ScaleSidecar.PathToWriteBeside(Target);

    /// <summary>Whether the copy and its sidecar are freed of what tells where the picture was taken and by whom.</summary>
    public bool IsClean { get; init; }
}
