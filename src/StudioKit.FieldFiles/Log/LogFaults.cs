using System.Text.Json;
using Microsoft.Data.Sqlite;
using StudioKit.Field;

namespace StudioKit.FieldFiles.Log;

/// <summary>Says what is wrong with a log, so that a person can put it right.</summary>
internal static class LogFaults
{
    private const int MayNot = 3;
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int RuleBroken = 19;

    // The kinds of a failed call of the system: what was to be written, and the index of the journal, which lies beside the log even for who reads.
    private static readonly int[] WriteFailed = [778, 1034, 1546];
    private static readonly int[] JournalFailed = [4618, 4874, 5130, 5386];

    public static FieldDiagnostic Damaged(string path, string what) => new(
        "FLD451", path, $"The log is damaged, or is no field log: {what}",
        $"'studiokit log rescue {path} NEW' saves what can be read into a new log and leaves this one as it is.");

    public static FieldDiagnostic Foreign(string path) => new("FLD451", path, "This is a database of another program; it was left as it is.");

    public static FieldDiagnostic Newer(string path, long version) => new(
        "FLD453", path, $"The log has version {version}, written by a later StudioKit; this one knows versions up to {LogSchema.Version}.",
        "Use the later one; the file was left as it is.");

    /// <summary>A fault met while reading.</summary>
    public static FieldDiagnostic Unread(SqliteException error, string path) =>
        Environmental(error, path) ?? Damaged(path, error.Message.TrimEnd('.') + ".");

    /// <summary>A fault met while writing.</summary>
    public static FieldDiagnostic Unwritten(SqliteException error, string path) => error.SqliteErrorCode == RuleBroken
        ? new FieldDiagnostic("FLD454", path, "It belongs to a session or subject that is not in the log.")
        : Environmental(error, path) ?? Damaged(path, error.Message.TrimEnd('.') + ".");

    /// <summary>Whether an error comes of a value that no StudioKit has written where it stands.</summary>
    public static bool IsOfDamage(Exception error) =>
        error is FormatException or ArgumentException or InvalidCastException or InvalidOperationException or OverflowException or JsonException;

    /// <summary>Whether a log cannot be opened where it lies though it may be sound: its folder takes no file beside it.</summary>
    public static bool IsUnwritablePlace(SqliteException error) =>
        error.SqliteErrorCode is ReadOnly or CannotOpen or MayNot || JournalFailed.Contains(error.SqliteExtendedErrorCode);

    private static FieldDiagnostic? Environmental(SqliteException error, string path) => error.SqliteErrorCode switch
    {
        Busy or Locked => new("FLD455", path, "Another program is at work on the log; try again."),
        ReadOnly or MayNot => new("FLD455", path, "The log or its folder is read-only; it can be listed and exported, but not changed."),
        Full => new("FLD455", path, "The disk is full; nothing was changed."),
        _ when WriteFailed.Contains(error.SqliteExtendedErrorCode) || JournalFailed.Contains(error.SqliteExtendedErrorCode) =>
            new("FLD455", path, "The disk is full, or fails; nothing was changed."),
        CannotOpen => new("FLD452", path, "The log cannot be opened."),
        _ => null,
    };
}
