using StudioKit.Planning;

namespace StudioKit.Sheets;

/// <summary>Files of a plan that are made together: a printed document, or a family of drawings or tables. Nothing is made before it is asked for.</summary>
public sealed record SheetGroup
{
    private readonly Func<IReadOnlyList<SheetFile>> _write;
    private readonly Func<IReadOnlyList<SheetFile>> _pages;

    internal SheetGroup(string name, SheetGroupKind kind, Func<IReadOnlyList<SheetFile>> write, Func<IReadOnlyList<SheetFile>> pages) =>
        (Name, Kind, _write, _pages) = (name, kind, write, pages);

    /// <summary>Name of the file where it is one, else of the family; unique in a plan.</summary>
    public string Name { get; }

    /// <summary>What it is.</summary>
    public SheetGroupKind Kind { get; }

    /// <summary>Makes the files.</summary>
    /// <returns>The files, the same for the same plan and options.</returns>
    public IReadOnlyList<SheetFile> Write() => _write();

    /// <summary>Pictures of it, to look at before it is printed.</summary>
    /// <returns>An SVG file for each page of a document and for each drawing; none for tables.</returns>
    public IReadOnlyList<SheetFile> Pages() => _pages();

    internal SheetGroup In(PlanUnits units) => new(Name, Kind, () => units.Tell(_write), () => units.Tell(_pages));
}
