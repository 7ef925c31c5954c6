using StudioKit.FieldFiles.Log.Rescue;

namespace StudioKit.Cli.Records;

/// <summary>What a rescue has to say, in sentences.</summary>
internal static class RescueWords
{
    public static string Of(RescueNote note) => note.Kind switch
    {
        RescueNoteKind.PageUnreadable => $"lost: page {note.Detail} of {note.Subject} cannot be read",
        RescueNoteKind.RowsUnreadable => $"lost: {note.Detail} {(note.Detail == "1" ? "row" : "rows")} of {note.Subject} cannot be read",
        RescueNoteKind.TableMissing => $"lost: the table of every {note.Subject} is missing",
        RescueNoteKind.JournalCut => "lost: the journal ends within a change",
        RescueNoteKind.NoSeals => "the log is of the first version, which has no seals: a letter or digit that changed goes unnoticed",
        RescueNoteKind.LaterVersion => $"doubtful: the log has version {note.Detail}, written by a later StudioKit; what that added is not read. Use the later one",
        RescueNoteKind.ValueLeftOut => $"lost: a value of {note.Subject}: {note.Detail}; something safe stands in its place",
        RescueNoteKind.Doubtful => $"doubtful: {note.Subject} is not as it was written; read it through",
        RescueNoteKind.FromHistory => $"doubtful: {note.Subject} is back from the history; it may be an older state",
        RescueNoteKind.FromOutside => $"doubtful: {note.Subject} was found outside of its table; it may be an older state, or have been taken out",
        RescueNoteKind.AgainstRules => $"lost: {note.Subject} was left behind: {note.Detail}",
        _ => $"lost: {note.Subject}, to which others belong; an empty one stands in its place",
    };
}
