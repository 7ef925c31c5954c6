using StudioKit.Field.Log.Release;

namespace StudioKit.Field.Log.Archive;

/// <summary>Looks whether what is said of a data set as a whole names a place that its records withhold.</summary>
public static class DescriptionCheck
{
    /// <summary>Words of sensitive places in a description or an address.</summary>
    /// <param name="release">What leaves the log.</param>
    /// <param name="description">What is said of it as a whole.</param>
    /// <param name="pictureFolder">Address of the pictures.</param>
    /// <returns>One note a word and field.</returns>
    public static IReadOnlyList<ReleaseNote> Notes(LogRelease release, DataSetDescription description, string pictureFolder)
    {
        ArgumentNullException.ThrowIfNull(release);
        ArgumentNullException.ThrowIfNull(description);
        (string Field, string Text)[] texts =
        [
            ("title", description.Title), ("creator", description.Creator), ("abstract", description.Abstract), ("licence", description.Licence),
            ("address of the pictures", pictureFolder),
        ];
        return
        [
            .. from session in release.Sessions
               where session.IsSensitive
               let words = new PlaceWords(session.Session)
               from text in texts
               let word = words.In(text.Text)
               where word is not null
               select new ReleaseNote(ReleaseNoteKind.DescriptionHoldsPlaceWord, session.Session.Id, $"{text.Field}: {word}"),
        ];
    }
}
