using System.Diagnostics;
using System.Globalization;
using StudioKit.Field.Tests.Log;
using StudioKit.FieldFiles.Log;

namespace StudioKit.FieldFiles.Tests.Log;

/// <summary>A process that writes the log is killed without warning; see <see cref="LogWriter"/> for the other side.</summary>
public sealed class KilledWriterTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData(1, 3)]
    [InlineData(2, 40)]
    [InlineData(3, 117)]
    [InlineData(4, 200)]
    public void No_acknowledged_record_is_lost_when_the_writer_is_killed(int seed, int killAfter)
    {
        var path = _scratch.File("field.log");

        var acknowledged = KillAfter(killAfter, path, seed);

        using var log = FieldLog.Open(path, new FixedTime(LogSamples.Now), () => "").Value!;
        log.CheckIntegrity().Should().BeEmpty();
        var snapshot = log.Read();
        var kept = snapshot.Sessions.Select(session => session.Id)
            .Concat(snapshot.Subjects.Select(subject => subject.Id))
            .Concat(snapshot.Measurements.Select(measurement => measurement.Id));
        acknowledged.Should().HaveCountGreaterThanOrEqualTo(killAfter).And.BeSubsetOf(kept);
    }

    private static List<string> KillAfter(int count, string path, int seed)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            ArgumentList = { "exec", typeof(LogWriter).Assembly.Location, LogWriter.Command, path, seed.ToString(CultureInfo.InvariantCulture) },
        };
        using var writer = Process.Start(start)!;
        var acknowledged = new List<string>();
        while (acknowledged.Count < count && writer.StandardOutput.ReadLine() is { } line)
        {
            acknowledged.Add(line);
        }

        writer.Kill();

        // What it had still said before it died counts as acknowledged, too; a line cut short does not.
        var rest = writer.StandardOutput.ReadToEnd();
        acknowledged.AddRange(rest[..(rest.LastIndexOf('\n') + 1)].Split('\n', StringSplitOptions.RemoveEmptyEntries));
        writer.WaitForExit();
        return acknowledged;
    }
}
