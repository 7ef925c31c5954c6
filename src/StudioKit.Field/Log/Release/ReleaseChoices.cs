namespace StudioKit.Field.Log.Release;

/// <summary>What the user decided on what leaves the log.</summary>
public sealed record ReleaseChoices
{
    /// <summary>Nothing released beyond what always leaves.</summary>
    public static ReleaseChoices None { get; } = new();

    /// <summary>Fields that leave as they were recorded, sensitive or not.</summary>
    public IReadOnlyList<FieldPermission> Released { get; init; } = [];

    /// <summary>Whether sensitive subjects stay behind altogether, so that the others of their sessions leave as they were recorded.</summary>
    public bool LeavesSensitiveOut { get; init; }

    /// <summary>Address of the folder where the pictures will be found, ending in a slash; empty to give file names alone.</summary>
    public string PictureFolder { get; init; } = "";

    /// <summary>Whether copies without any telling metadata are laid out under neutral names at <see cref="PictureFolder"/>.</summary>
    public bool HasCleanPictures { get; init; }

    /// <summary>Whether a field of a record leaves as it was recorded.</summary>
    internal bool Allows(string term, params ReadOnlySpan<string> recordIds)
    {
        foreach (var permission in Released)
        {
            if (permission.Term == term && (permission.RecordId.Length == 0 || recordIds.Contains(permission.RecordId)))
            {
                return true;
            }
        }

        return false;
    }
}
