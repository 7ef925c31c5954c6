using StudioKit.Field;
using StudioKit.FieldFiles.Scale;
using StudioKit.Writing;

namespace StudioKit.FieldFiles.Tests.Scale;

/// <summary>Runs of a single picture.</summary>
internal static class Scaled
{
    public static FieldResult<ScaledPicture> Make(ScaleJob job)
    {
        using var files = FileBatch.Open(ScaleBatch.Files([job]));
        var made = ScaledCopy.Make(job, files);
        files.Commit();
        return made;
    }
}
