using StudioKit.Sheets.Documents;

namespace StudioKit.Sheets;

/// <summary>Files of a plan that are made together: a printed document, or a family of drawings or tables. Nothing is made before it is asked for.</summary>
public sealed record SheetGroup
{
    private readonly Func<IReadOnlyList<SheetFile>> _write;

    internal SheetGroup(string name, SheetGroupKind kind, Func<IReadOnlyList<SheetFile>> write) => (Name, Kind, _write) = (name, kind, write);

    /// <summary>Name of the file where it is one, else of the family; unique in a plan.</summary>
    public string Name { get; }

    /// <summary>What it is.</summary>
    public SheetGroupKind Kind { get; }

    // The printed document, for whoever wants to see its pages.
    internal NamedChapter? Document { get; init; }

    /// <summary>Makes the files.</summary>
    /// <returns>The files, the same for the same plan and options.</returns>
    public IReadOnlyList<SheetFile> Write() => _write();
}
