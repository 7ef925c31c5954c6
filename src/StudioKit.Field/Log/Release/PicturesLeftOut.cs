namespace StudioKit.Field.Log.Release;

/// <summary>Which pictures stay behind with the sensitive subjects that they show.</summary>
/// <remarks>A picture that shows another subject, too, stays behind with it: beside the other's exact place it would tell the sensitive one's.</remarks>
internal sealed class PicturesLeftOut
{
    private readonly List<FieldFrame> _shared;

    public PicturesLeftOut(LogSnapshot log)
    {
        var subjects = log.Subjects.ToDictionary(subject => subject.Id, StringComparer.Ordinal);
        var known = log.Frames.Where(frame => subjects.ContainsKey(frame.SubjectId)).ToList();
        var sensitive = known.Where(frame => subjects[frame.SubjectId].Sensitivity != PlaceSensitivity.Open).ToList();
        var files = sensitive.Select(frame => (subjects[frame.SubjectId].SessionId, frame.FileName)).ToHashSet();
        _shared = [.. known.Except(sensitive).Where(frame => files.Contains((subjects[frame.SubjectId].SessionId, frame.FileName)))];
        FileNames = [.. sensitive.Select(frame => frame.FileName)];
        Leaving = [.. log.Frames.Except(_shared)];
    }

    /// <summary>Frames that leave, and those of subjects that do not.</summary>
    public IReadOnlyList<FieldFrame> Leaving { get; }

    /// <summary>File names of the pictures of sensitive subjects.</summary>
    public IReadOnlyList<string> FileNames { get; }

    /// <summary>What the user is told of the pictures that stay behind though their subject leaves.</summary>
    public IEnumerable<ReleaseNote> Notes => _shared.Count > 0 ? [new ReleaseNote(ReleaseNoteKind.SharedPictureLeftOut, "", _shared[0].FileName, _shared.Count)] : [];
}
