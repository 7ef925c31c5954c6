using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>What could be read of a damaged log.</summary>
/// <param name="Log">The records.</param>
/// <param name="Notes">What is lost or doubtful.</param>
public sealed record RescuedLog(LogSnapshot Log, IReadOnlyList<RescueNote> Notes)
{
    /// <summary>Whether everything was read as it was written.</summary>
    public bool IsWhole => Notes.All(note => note.Kind == RescueNoteKind.NoSeals);

    /// <summary>Short identifiers that the damaged log had given.</summary>
    internal IReadOnlyList<FoundRow> Labels { get; init; } = [];

    /// <summary>Changes that the damaged log had kept, as rows of its tables.</summary>
    internal IReadOnlyList<FoundRow> Changes { get; init; } = [];

    /// <summary>What those changes did, as rows of their table.</summary>
    internal IReadOnlyList<FoundRow> ChangedRecords { get; init; } = [];
}
