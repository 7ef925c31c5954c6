using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;
using StudioKit.Field;
using StudioKit.Field.Tests.Log;
using StudioKit.FieldFiles.Log;

namespace StudioKit.FieldFiles.Tests.Log;

public sealed class LogOpeningTests : IDisposable
{
    private static readonly FixedTime Clock = new(LogSamples.Now);
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Many_that_start_one_log_at_once_all_write_into_it()
    {
        for (var round = 0; round < 3; round++)
        {
            var path = _scratch.File(string.Create(CultureInfo.InvariantCulture, $"{round}.log"));
            using var together = new Barrier(8);
            var refused = new string[8];
            var writers = Enumerable.Range(0, 8).Select(number => new Thread(() =>
            {
                together.SignalAndWait();
                var opened = FieldLog.Open(path, Clock, () => "");
                using var log = opened.Value;
                var saved = log?.Save(LogSamples.Session with { Id = string.Create(CultureInfo.InvariantCulture, $"s{number}") });
                refused[number] = string.Join(' ', opened.Diagnostics.Concat(saved?.Diagnostics ?? []));
            })).ToList();
            writers.ForEach(writer => writer.Start());
            writers.ForEach(writer => writer.Join());

            refused.Should().OnlyContain(reason => reason.Length == 0);
            using var log = FieldLog.OpenToRead(path, Clock).Value!;
            log.Read().Sessions.Should().HaveCount(8);
            log.Index().Entries.Select(entry => entry.ShortId).Should().OnlyHaveUniqueItems().And.HaveCount(8);
        }
    }

    [Fact]
    public void Many_that_bring_one_old_log_to_this_version_at_once_all_find_it_whole()
    {
        var path = _scratch.File("field.log");
        File.Copy(Path.Combine(AppContext.BaseDirectory, "Data", "version-1.log"), path);
        using var together = new Barrier(6);
        var counts = new int[6];
        var openers = Enumerable.Range(0, 6).Select(number => new Thread(() =>
        {
            together.SignalAndWait();
            using var log = FieldLog.Open(path, Clock, () => "").Value;
            counts[number] = log?.Index().Entries.Count ?? 0;
        })).ToList();
        openers.ForEach(opener => opener.Start());
        openers.ForEach(opener => opener.Join());

        counts.Should().OnlyContain(count => count == 8);
    }

    /// <summary>Who may do everything is not kept out by rights, so then the process that reads runs as nobody.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_log_in_a_folder_that_may_not_be_written_is_read_with_its_journal(bool hasJournal)
    {
        var folder = Directory.CreateDirectory(_scratch.File("card"));
        var path = Path.Combine(folder.FullName, "field.log");
        Make(path, hasJournal);
        var before = Directory.GetFiles(folder.FullName).ToDictionary(file => file, File.ReadAllBytes);
        SetReadOnly(folder.FullName, isReadOnly: true);
        try
        {
            Read(path).Should().Be("1 1 1 1");
        }
        finally
        {
            SetReadOnly(folder.FullName, isReadOnly: false);
        }

        Directory.GetFiles(folder.FullName).Should().BeEquivalentTo(before.Keys);
        before.Should().AllSatisfy(file => File.ReadAllBytes(file.Key).Should().Equal(file.Value));
    }

    [Fact]
    public void Reading_leaves_one_file_and_starts_none()
    {
        Make(_scratch.File("field.log"), hasJournal: false);

        using (var log = FieldLog.OpenToRead(_scratch.File("field.log"), Clock).Value!)
        {
            log.Save(LogSamples.Session with { Remarks = "changed" }).Diagnostics.Single().Code.Should().Be("FLD455");
        }

        FieldLog.OpenToRead(_scratch.File("other.log"), Clock).Diagnostics.Single().Code.Should().Be("FLD458");
        FieldLog.OpenExisting(_scratch.File("other.log"), Clock, () => "").Diagnostics.Single().Code.Should().Be("FLD458");
        Directory.GetFiles(_scratch.Path).Should().ContainSingle();
    }

    [Fact]
    public void An_empty_file_is_started_by_who_writes_and_refused_to_who_reads()
    {
        File.WriteAllBytes(_scratch.File("field.log"), []);

        FieldLog.OpenToRead(_scratch.File("field.log"), Clock).Diagnostics.Single().Code.Should().Be("FLD458");
        using var log = FieldLog.Open(_scratch.File("field.log"), Clock, () => "").Value!;
        log.Import(LogSamples.Snapshot).Should().BeEmpty();
    }

    [Fact]
    public void A_log_has_its_name_only_once_it_is_whole()
    {
        using var log = FieldLog.Open(_scratch.File("field.log"), Clock, () => "").Value!;
        using var seen = FieldLog.OpenToRead(_scratch.File("field.log"), Clock).Value!;

        seen.Read().Records.Should().BeEmpty();
        Directory.GetFileSystemEntries(_scratch.Path).Select(Path.GetFileName).Should().BeSubsetOf(["field.log", "field.log-wal", "field.log-shm"]);
    }

    /// <summary>Result codes of SQLite's C interface: SQLITE_IOERR is 10; _WRITE, _FSYNC, _SHMSIZE and _SHMMAP are its 3rd, 4th, 19th and 21st kind, each times 256.</summary>
    [Theory]
    [InlineData(3, false)]
    [InlineData(4, false)]
    [InlineData(19, true)]
    [InlineData(21, true)]
    public void A_log_on_a_full_disk_is_not_called_damaged(int kind, bool canBeReadElsewhere)
    {
        var error = new SqliteException("disk I/O error", 10, 10 + (256 * kind));

        LogFaults.Unwritten(error, "field.log").Should().Match<FieldDiagnostic>(fault => fault.Code == "FLD455" && fault.Message.Contains("disk is full") && fault.Message.Contains("nothing was changed"));
        LogFaults.IsUnwritablePlace(error).Should().Be(canBeReadElsewhere);
    }

    /// <summary>As above; _READ and _CORRUPTFS are the 1st and 33rd kind.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(33)]
    public void A_log_whose_disk_gives_other_bytes_back_is_damaged(int kind) =>
        LogFaults.Unread(new SqliteException("disk I/O error", 10, 10 + (256 * kind)), "field.log").Code.Should().Be("FLD451");

    private void Make(string path, bool hasJournal)
    {
        var made = hasJournal ? _scratch.File("live.log") : path;
        using var log = FieldLog.Open(made, Clock, () => "").Value!;
        log.Import(LogSamples.Snapshot).Should().BeEmpty();
        foreach (var ending in hasJournal ? new[] { "", "-wal" } : [])
        {
            // As a killed writer leaves it: nothing is in the file yet, all of it in the journal.
            File.Copy(made + ending, path + ending);
        }
    }

    private static string Read(string path)
    {
        string[] command = ["dotnet", "exec", typeof(LogWriter).Assembly.Location, LogWriter.ReadCommand, path];
        string[] words = Environment.IsPrivilegedProcess ? ["setpriv", "--reuid=65534", "--clear-groups", .. command] : command;
        var start = new ProcessStartInfo(words[0], words[1..]) { UseShellExecute = false, RedirectStandardOutput = true };
        using var reader = Process.Start(start)!;
        var said = reader.StandardOutput.ReadToEnd();
        reader.WaitForExit();
        return said.Trim();
    }

    private void SetReadOnly(string folder, bool isReadOnly)
    {
        const UnixFileMode Read = UnixFileMode.UserRead | UnixFileMode.GroupRead | UnixFileMode.OtherRead;
        const UnixFileMode Enter = UnixFileMode.UserExecute | UnixFileMode.GroupExecute | UnixFileMode.OtherExecute;
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        File.SetUnixFileMode(_scratch.Path, Read | Enter | UnixFileMode.UserWrite);
        foreach (var file in Directory.GetFiles(folder))
        {
            File.SetUnixFileMode(file, isReadOnly ? Read : Read | UnixFileMode.UserWrite);
        }

        File.SetUnixFileMode(folder, isReadOnly ? Read | Enter : Read | Enter | UnixFileMode.UserWrite);
    }
}
