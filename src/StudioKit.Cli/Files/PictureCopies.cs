using StudioKit.Field;
using StudioKit.Field.Log.Release;
using StudioKit.FieldFiles.Metadata;
using StudioKit.Writing;

namespace StudioKit.Cli.Files;

/// <summary>Copies of a log's pictures to be published: those of sensitive sessions cleaned and under the names that their records leave with, the others as they are.</summary>
internal sealed class PictureCopies
{
    private readonly List<(string Original, string Copy, bool IsSensitive)> _copies = [];

    /// <summary>The copies of what leaves a log.</summary>
    /// <param name="release">What leaves.</param>
    /// <param name="originals">Folder with the originals; none where no copies are made.</param>
    /// <param name="folder">Folder for the copies.</param>
    public PictureCopies(LogRelease release, string? originals, string? folder)
    {
        // One file can show a sensitive subject and another, so it is asked by its name, not by the record that it leaves with.
        var sensitive = release.SensitivePictures.ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var frame in originals is null || folder is null ? [] : release.Sessions.SelectMany(session => session.Subjects.SelectMany(subject => subject.Frames)).DistinctBy(frame => frame.FileName, StringComparer.Ordinal))
        {
            var original = Path.Combine(originals!, frame.Frame.FileName);
            if (File.Exists(original))
            {
                _copies.Add((original, Path.Combine(folder!, frame.FileName), sensitive.Contains(frame.Frame.FileName)));
            }
            else
            {
                Missing.Add(frame.Frame.FileName);
            }
        }
    }

    /// <summary>Pictures that have no original in the folder.</summary>
    public List<string> Missing { get; } = [];

    /// <summary>Files that are read.</summary>
    public IEnumerable<string> Originals => _copies.Select(copy => copy.Original);

    /// <summary>Files that are written.</summary>
    public IReadOnlyList<string> Targets => [.. _copies.Select(copy => copy.Copy)];

    /// <summary>Writes the copies, one at a time, so that memory holds none of them whole.</summary>
    /// <returns>None, or why a picture cannot be cleaned.</returns>
    /// <exception cref="FileTroubleException">An original cannot be read.</exception>
    public FieldDiagnostic? Write(FileBatch batch)
    {
        foreach (var (original, copy, isSensitive) in _copies)
        {
            using var source = InputFile.Read(original, File.OpenRead);
            FieldDiagnostic? refusal = null;
            batch.Write(copy, target =>
            {
                if (isSensitive)
                {
                    refusal = CleanPicture.Copy(source, original, target);
                }
                else
                {
                    source.CopyTo(target);
                }
            });
            if (refusal is not null)
            {
                return refusal;
            }
        }

        return null;
    }
}
