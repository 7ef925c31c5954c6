using System.Globalization;
using StudioKit.Field.Tests.Log;
using StudioKit.FieldFiles.Log;

namespace StudioKit.FieldFiles.Tests.Log;

/// <summary>Run as a process of its own: writes random records for ever and prints the identifier of each once it is acknowledged.</summary>
internal static class LogWriter
{
    public const string Command = "write-log";
    public const string ReadCommand = "read-log";

    public static int Main(string[] arguments)
    {
        if (arguments is [ReadCommand, var read])
        {
            return Read(read);
        }

        if (arguments is not [Command, var path, var seed])
        {
            return 2;
        }

        var random = new Random(int.Parse(seed, CultureInfo.InvariantCulture));
        var number = 0;
        using var log = FieldLog.Open(path, new FixedTime(LogSamples.Now), () => string.Create(CultureInfo.InvariantCulture, $"{seed}-{++number}")).Value!;
        var session = Said(log.Save(LogSamples.Session with { Id = "" }).Value!, kept => kept.Id);
        var subject = Said(log.Save(LogSamples.Subject with { Id = "", SessionId = session.Id }).Value!, kept => kept.Id);
        while (true)
        {
            switch (random.Next(4))
            {
                case 0:
                    session = Said(log.Save(LogSamples.Session with { Id = "", Remarks = new string('r', random.Next(9000)) }).Value!, kept => kept.Id);
                    break;
                case 1:
                    subject = Said(log.Save(LogSamples.Subject with { Id = "", SessionId = session.Id }).Value!, kept => kept.Id);
                    break;
                default:
                    Said(log.Save(LogSamples.Measurement with { Id = "", SubjectId = subject.Id }).Value!, kept => kept.Id);
                    break;
            }
        }
    }

    private static int Read(string path)
    {
        var opened = FieldLog.OpenToRead(path, new FixedTime(LogSamples.Now));
        using var log = opened.Value;
        var records = log?.Read();
        Console.Out.WriteLine(records is null
            ? opened.Diagnostics[0].ToString()
            : string.Create(CultureInfo.InvariantCulture, $"{records.Sessions.Count} {records.Subjects.Count} {records.Frames.Count} {records.Measurements.Count}"));
        return 0;
    }

    private static T Said<T>(T record, Func<T, string> id)
    {
        Console.Out.Write(id(record) + "\n");
        Console.Out.Flush();
        return record;
    }
}
