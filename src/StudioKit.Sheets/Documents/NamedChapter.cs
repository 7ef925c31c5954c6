using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>A printed document with the name of its file, for when it is written alone; laid out when it is asked for, and kept as long as somebody holds it.</summary>
/// <param name="fileName">Name of its file.</param>
/// <param name="kind">What it is.</param>
/// <param name="lay">Lays it out.</param>
internal sealed class NamedChapter(string fileName, SheetGroupKind kind, Func<Chapter> lay)
{
    // Cards of a large kit take a hundred megabytes, and other documents are still to come.
    private WeakReference<Chapter>? _laid;

    public string FileName => fileName;

    public SheetGroupKind Kind => kind;

    /// <summary>Whether it begins on a right-hand page of a book, as what is cut apart must: its backs then lie behind its fronts.</summary>
    public bool StartsRight { get; init; }

    public Chapter Chapter
    {
        get
        {
            if (_laid is null || !_laid.TryGetTarget(out var chapter))
            {
                chapter = lay();
                _laid = new(chapter);
            }

            return chapter with { StartsRight = StartsRight };
        }
    }
}
