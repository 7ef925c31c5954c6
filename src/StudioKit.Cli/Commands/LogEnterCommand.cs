using System.CommandLine;
using System.Text;
using StudioKit.Cli.Files;
using StudioKit.Cli.Records;
using StudioKit.Cli.Tables;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Rows;
using StudioKit.FieldFiles.Log;
using StudioKit.Planning.Session;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log enter</c>: takes the rows of a paper log.</summary>
internal sealed class LogEnterCommand
{
    private const string Text =
        """
        Takes the rows of a paper log: comma-separated text from a file, or typed in where the file is left out (end with Ctrl-D). One row is an
        animal, or a further run of its pictures. All rows are recorded as one change, or none: every fault is named with its line and column.

        With a head, columns are any of: date, place, time, animal, scientific, doubt, count, sex, stage, framing, set-up, frames, held, released,
        limit, size, sensitive, remarks. Without one they are the boxes of the printed sheet (paper-log.pdf of 'studiokit sheets'): time, animal,
        count, framing, set-up, frames, held, released, size, sensitive, remarks.

        Date, place, framing and set-up hold until another is given; a hyphen takes them back. A row without an animal goes on with the one above; ?
        is an animal without a name. A time is 14:05, of the day on which it lies nearest to the time before. Frames are numbers, runs and file
        names, parted by semicolons. Framing and set-up are names, or with --kit the letters of the printed sheet. "kept 14:12" under released says
        that it was not released where it was found. Size is the body's length in mm. Sensitive is open, hundredth, tenth or withheld; x is withheld.

        Example rows:
          date,place,time,animal,scientific,doubt,framing,set-up,frames,held,released,size,remarks
          2026-05-09,Wisplow Fen,14:05,raft spider,Dolomedes,cf.,A,B,0412-0419,14:02,14:16,18.5,on a leaf
          ,,14:11,,,,C,,0420-0424; 0426,,,,
          ,,14:40,sundew,,,A,,0427-0430,,,,

        Example: studiokit log enter rows.csv --kit kits/fen-edge.yaml --preview
        Example: studiokit log enter rows.csv --kit kits/fen-edge.yaml --pictures "fen-####.jpg"
        Example: studiokit log enter --template > rows.csv
        """;

    private const int LargestFile = 4_000_000;
    private readonly CommandHost _host;
    private readonly Option<string> _log;
    private readonly Argument<string?> _rows = new("rows") { Description = "File with the rows, e.g. rows.csv; - or nothing to type them in.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> _kit = new("--kit") { Description = "Kit whose letters stand in the rows, e.g. kits/fen-edge.yaml. Default: names in full.", HelpName = "kit" };

    private readonly Option<string> _pictures = new("--pictures")
    {
        Description = "File name that a frame number stands for, e.g. \"fen-####.jpg\".",
        DefaultValueFactory = _ => "####.jpg",
        HelpName = "pattern",
    };

    private readonly Option<string?> _session = new("--session") { Description = "Session that all rows belong to, e.g. last. Default: by their dates and places, begun where there is none.", HelpName = "session" };
    private readonly Option<bool> _preview = new("--preview") { Description = "Show what the rows say, and record nothing." };
    private readonly Option<bool> _template = new("--template") { Description = "Print the head of the table, to be filled in; nothing is recorded." };

    private LogEnterCommand(CommandHost host, Option<string> log) => (_host, _log) = (host, log);

    public static Command Create(CommandHost host, Option<string> log)
    {
        var enter = new LogEnterCommand(host, log);
        var command = new Command("enter", Text) { enter._rows, enter._kit, enter._pictures, enter._session, enter._preview, enter._template };
        command.SetAction(parsed => (int)enter.Run(parsed));
        return command;
    }

    private ExitCode Run(ParseResult parsed)
    {
        if (parsed.GetValue(_template))
        {
            _host.Output.Write(RowWriter.Template);
            return ExitCode.Done;
        }

        var file = parsed.GetValue(_rows);
        if (Keys(parsed, out var keys) is { } refused)
        {
            return refused;
        }

        var rows = file is null or "-" ? ("rows", Typed()) : (file, InputFile.Text(file, LargestFile));
        return OpenLog.With(_host, FrameNumbers.OfPattern(parsed.GetRequiredValue(_pictures)), numbers => Read(parsed, rows, keys, numbers));
    }

    // Against what the log has, without starting one: nothing is left behind of rows that are refused.
    private ExitCode Read(ParseResult parsed, (string Name, string Text) rows, LetterKeys? keys, FrameNumbers numbers)
    {
        var path = parsed.GetRequiredValue(_log);
        if (!File.Exists(path) && parsed.GetValue(_session) is null)
        {
            return Enter(parsed, rows, Context(LogSnapshot.Empty, null, keys, numbers));
        }

        return OpenLog.ToRead(_host, path, log => parsed.GetValue(_session) is { } reference
            ? OpenLog.With(_host, log.Index().Session(reference), session => Enter(parsed, rows, Context(log.Read(), session, keys, numbers)))
            : Enter(parsed, rows, Context(log.Read(), null, keys, numbers)));
    }

    private ExitCode Enter(ParseResult parsed, (string Name, string Text) rows, RowContext context) => OpenLog.With(_host, RowReader.Read(rows.Name, rows.Text, context), records =>
    {
        EnteredText.Print(_host.Output, records, context.Log);
        if (parsed.GetValue(_preview))
        {
            _host.Error.WriteLine("preview: nothing was recorded.");
            return ExitCode.Done;
        }

        return OpenLog.OrStart(_host, parsed.GetRequiredValue(_log), log => Record(log, records));
    });

    private ExitCode Record(FieldLog log, LogSnapshot records)
    {
        var faults = log.Save(records, LogAction.Recorded);
        if (faults.Count == 0)
        {
            _host.Error.WriteLine("recorded; 'studiokit log undo' takes all of it back.");
        }

        return FieldFaults.Print(_host, faults);
    }

    private RowContext Context(LogSnapshot log, FieldSession? session, LetterKeys? keys, FrameNumbers numbers) => new()
    {
        Log = log,
        Session = session,
        Keys = keys,
        Numbers = numbers,
        Now = _host.Clock.GetUtcNow(),
        Zone = local => _host.Clock.LocalTimeZone.GetUtcOffset(local),
        NewId = () => "urn:uuid:" + Guid.CreateVersion7(_host.Clock.GetUtcNow()),
    };

    private ExitCode? Keys(ParseResult parsed, out LetterKeys? keys)
    {
        keys = null;
        if (parsed.GetValue(_kit) is not { } path)
        {
            return null;
        }

        var read = KitInput.Read(path, _host);
        if (read.HasErrors)
        {
            return ExitCode.BadInput;
        }

        var plan = Planner.Plan(read);
        keys = LetterKeys.Of(plan);
        _host.Error.WriteLine($"letters of content {plan.ContentHash}, which the printed sheet must name, too.");
        return null;
    }

    private string Typed()
    {
        using var reader = new StreamReader(_host.OpenInput(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        var buffer = new char[LargestFile + 1];
        var count = reader.ReadBlock(buffer, 0, buffer.Length);
        return count > LargestFile ? throw new FileTroubleException("the rows typed in are more than anybody writes on paper.") : new string(buffer, 0, count);
    }
}
