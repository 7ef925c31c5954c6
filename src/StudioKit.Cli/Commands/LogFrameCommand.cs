using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Records;
using StudioKit.Field;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Matching;
using StudioKit.FieldFiles.Log;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log frame</c>: adds pictures.</summary>
internal sealed class LogFrameCommand
{
    private const string Text =
        """
        Adds pictures; time, lens and settings are read from the files, the scale from the sidecars of scaled copies. Whom a picture shows is told by
        naming the subject first, or found by who was in hand when it was taken ('log hold'); plants and others that are never held are named, or
        entered with their pictures' numbers ('log enter'). The match is shown first, then recorded as one change,
        which 'studiokit log undo' takes back. A picture that is logged already stays with its subject and keeps what is not given anew.

        Example: studiokit log frame card/DCIM --sidecars scaled --kit kits/fen-edge.yaml --preview
        Example: studiokit log frame card/DCIM --camera-clock "watch.jpg=2026-05-09T14:02:30"
        Example: studiokit log frame last spider-001.jpg --caption "from above"
        """;

    private readonly CommandHost _host;
    private readonly RecordFields<FieldFrame> _fields;
    private readonly CameraClockOptions _clock;
    private readonly Argument<string[]> _pictures = new("pictures") { Description = "Picture files or folders, e.g. card/DCIM; before them the subject where all show one, e.g. last.", Arity = ArgumentArity.OneOrMore };
    private readonly Option<string?> _subject = new("--subject") { Description = "Whom all of them show, e.g. d4t; found by time where left out.", HelpName = "subject" };
    private readonly Option<string?> _session = new("--session") { Description = "Look at the subjects of one session only, e.g. k7m; at all where left out.", HelpName = "session" };
    private readonly Option<string?> _kit = new("--kit") { Description = "Kit to find framing and set-up in, e.g. kits/fen-edge.yaml; neither is looked for where left out.", HelpName = "kit" };
    private readonly Option<string[]> _sidecars = new("--sidecars") { Description = "Folder with scaled copies, e.g. scaled; only the pictures' own folder is looked into where left out.", HelpName = "folder" };
    private readonly Option<bool> _preview = new("--preview") { Description = "Show the match, and record nothing." };
    private readonly Option<bool> _json = JsonOption.Create();

    private LogFrameCommand(CommandHost host) => (_host, _fields, _clock) = (host, FrameFields.Create(host), new CameraClockOptions(host));

    public static Command Create(CommandHost host, Option<string> file)
    {
        var frame = new LogFrameCommand(host);
        var command = new Command("frame", Text)
        {
            frame._pictures, frame._subject, frame._session, frame._kit, frame._sidecars, frame._preview, frame._json,
        };
        frame._clock.AddTo(command);
        frame._fields.AddTo(command);
        command.SetAction(parsed => (int)(parsed.GetValue(frame._preview)
            ? OpenLog.ToRead(host, parsed.GetRequiredValue(file), log => frame.Run(parsed, log))
            : OpenLog.ToWrite(host, parsed.GetRequiredValue(file), log => frame.Run(parsed, log))));
        return command;
    }

    private ExitCode Run(ParseResult parsed, FieldLog log)
    {
        var (index, paths) = (log.Index(), parsed.GetRequiredValue(_pictures));
        var name = parsed.GetValue(_subject);
        if (name is null && paths.Length > 1 && !File.Exists(paths[0]) && !Directory.Exists(paths[0]))
        {
            (name, paths) = (paths[0], paths[1..]);
        }

        return name is null
            ? WithSubject(parsed, log, index, paths, null)
            : OpenLog.With(_host, index.Subject(name), subject => WithSubject(parsed, log, index, paths, subject));
    }

    private ExitCode WithSubject(ParseResult parsed, FieldLog log, LogIndex index, string[] paths, FieldSubject? subject)
    {
        if (parsed.GetValue(_session) is not { } session)
        {
            return WithClock(parsed, log, index, paths, subject, null);
        }

        return OpenLog.With(_host, index.Session(session), found => WithClock(parsed, log, index, paths, subject, found));
    }

    private ExitCode WithClock(ParseResult parsed, FieldLog log, LogIndex index, string[] paths, FieldSubject? subject, FieldSession? session)
    {
        if (_clock.Read(parsed) is not { } clock)
        {
            return ExitCode.BadInput;
        }

        var kit = parsed.GetValue(_kit) is { } path ? KitInput.Read(path, _host) : null;
        if (kit is { Kit: null })
        {
            return ExitCode.BadInput;
        }

        var now = _host.Clock.GetLocalNow();
        var matcher = new FrameMatcher(log.Read(), session?.Id, clock.Value, now.Offset, kit is null ? null : Planner.Plan(kit));
        return Match(parsed, log, index, paths, picture => matcher.Match(picture, subject));
    }

    private ExitCode Match(ParseResult parsed, FieldLog log, LogIndex index, string[] paths, Func<LoggedPicture, FrameMatch> match)
    {
        var files = new LoggedPictureFiles(parsed.GetValue(_sidecars) ?? []);
        var found = InputFile.Read(paths[0], _ => LoggedPictureFiles.In(paths)).ToList();
        var read = found.Select(files.Read).ToList();
        var matches = read.Where(result => result.IsSound).Select(result => match(result.Value!)).ToList();
        var known = log.Read().Frames;
        _host.Output.Write(parsed.GetValue(_json) ? FrameMatchJson.Of(matches, index, known) + Environment.NewLine : matches.Count > 0 ? FrameMatchTable.Of(matches, index, known) : "");
        var faults = FieldFaults.Print(_host, read.SelectMany(result => result.IsSound ? [] : result.Diagnostics));
        if (read.Count == 0)
        {
            _host.Error.WriteLine($"studiokit: there is no picture in {string.Join(", ", paths)}; JPEG, PNG and TIFF are read.");
            return ExitCode.BadInput;
        }

        var saved = parsed.GetValue(_preview) ? ExitCode.Done : Save(parsed, log, matches);
        WarnOfPlaces(log.Read(), found.Zip(read).Where(pair => pair.Second.IsSound).Select(pair => pair.First).Zip(matches));
        return saved != ExitCode.Done ? saved : faults;
    }

    private void WarnOfPlaces(LogSnapshot log, IEnumerable<(string Path, FrameMatch Match)> pictures)
    {
        var sensitive = log.Subjects.Where(subject => subject.Sensitivity != PlaceSensitivity.Open).Select(subject => subject.SessionId).ToHashSet(StringComparer.Ordinal);
        foreach (var (path, match) in pictures.Where(picture => picture.Match.Subject.Subject is { } subject && sensitive.Contains(subject.SessionId)))
        {
            CleanOptions.Warn(_host, path, "its session is sensitive: share clean copies alone, as 'log export --copies' and 'scale --log' make them.");
        }
    }

    private ExitCode Save(ParseResult parsed, FieldLog log, List<FrameMatch> matches)
    {
        var known = log.Read().Frames;
        var frames = matches.Select(match => match.ToFrame(known)).OfType<FieldFrame>().Select(frame => _fields.Apply(parsed, frame)).ToList();
        if (frames.GroupBy(frame => frame.Id, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1) is { } twice)
        {
            return FieldFaults.Print(_host, [new FieldDiagnostic("FLD483", twice.First().FileName, "Two of the pictures bear this name and show one subject; log them apart, or rename one.")]);
        }

        var faults = log.Save(LogSnapshot.Empty with { Frames = frames }, LogAction.Recorded);
        if (faults.Count > 0)
        {
            return FieldFaults.Print(_host, faults);
        }

        var unmatched = matches.Count - frames.Count;
        _host.Error.WriteLine($"{RecordWords.Count(LogRecordKind.Frame, frames.Count)} recorded{(unmatched > 0 ? $", {unmatched} not matched: name the subject with --subject" : "")}");
        return unmatched > 0 ? ExitCode.PlanFails : ExitCode.Done;
    }
}
