using Microsoft.Data.Sqlite;
using StudioKit.Field;
using StudioKit.Writing;

namespace StudioKit.FieldFiles.Log;

/// <summary>A copy of a log in the folder for temporary files, with the journal that belongs to it, for as long as it is read.</summary>
internal sealed class LogCopy : IDisposable
{
    private const string Journal = "-wal";
    private readonly TemporaryFolder _folder = new("studiokit-log-");

    private string Copied => _folder.File("copy.log");

    /// <summary>Copies a log.</summary>
    /// <param name="path">File.</param>
    /// <returns>The copy, or why the log cannot be read.</returns>
    public static FieldResult<LogCopy> Of(string path)
    {
        LogCopy? copy = null;
        try
        {
            copy = new LogCopy();
            copy._folder.Copy(path, copy.Copied);
            if (File.Exists(path + Journal))
            {
                copy._folder.Copy(path + Journal, copy.Copied + Journal);
            }

            return copy;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            copy?.Dispose();
            return new FieldDiagnostic("FLD452", path, $"The log cannot be read where it lies, nor copied to be read: {WritingFault.Reason(error)}.");
        }
    }

    /// <summary>Opens the copy; faults are told of the original.</summary>
    public FieldResult<SqliteConnection> Open(string path)
    {
        try
        {
            var opened = LogFile.OpenToRead(Copied);
            return opened.IsSound ? opened : FieldResult<SqliteConnection>.Refused([.. opened.Diagnostics.Select(fault => fault with { Subject = path, Hint = fault.Hint.Replace(Copied, path, StringComparison.Ordinal) })]);
        }
        catch (SqliteException error)
        {
            return LogFaults.Unread(error, path);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();
}
