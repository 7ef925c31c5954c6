using System.CommandLine;
using StudioKit.Cli.Records;
using StudioKit.Field;
using StudioKit.Field.Log;
using StudioKit.FieldFiles.Pictures;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log frame</c>: adds pictures.</summary>
internal static class LogFrameCommand
{
    private const string Text =
        """
        Adds pictures of a subject; time, lens and settings are read from them. A picture that is logged already keeps what is not given anew.

        Example: studiokit log frame last spider-001.jpg spider-002.jpg --caption "from above"
        """;

    public static Command Create(CommandHost host, Option<string> file)
    {
        var subject = References.Subject();
        var photos = new Argument<string[]>("photos") { Description = "Picture files, e.g. spider-001.jpg.", Arity = ArgumentArity.OneOrMore };
        var fields = FrameFields.Create(host);
        var command = new Command("frame", Text) { subject, photos };
        fields.AddTo(command);
        command.SetAction(parsed => (int)OpenLog.ToWrite(host, parsed.GetRequiredValue(file), log =>
            OpenLog.With(host, log.Index().Subject(parsed.GetRequiredValue(subject)), found =>
            {
                var (code, frames) = (ExitCode.Done, log.Read().Frames);
                foreach (var photo in parsed.GetRequiredValue(photos))
                {
                    var read = Read(host, photo, found, frames);
                    var saved = OpenLog.With(host, read, frame => LogCommand.Report(host, log, log.Save(fields.Apply(parsed, frame)), kept => kept.Id));
                    code = saved == ExitCode.Done ? code : saved;
                }

                return code;
            })));
        return command;
    }

    private static FieldResult<FieldFrame> Read(CommandHost host, string photo, FieldSubject subject, IReadOnlyList<FieldFrame> known)
    {
        var opened = FramePicture.Open(photo);
        using var picture = opened.Value;
        if (picture is null)
        {
            return opened.Diagnostics[0];
        }

        var read = FieldFrame.From(subject.Id, photo, picture.Settings, host.Clock.LocalTimeZone.GetUtcOffset(host.Clock.GetUtcNow()));
        return known.FirstOrDefault(frame => frame.Id == read.Id)?.ReadAgain(read) ?? read;
    }
}
