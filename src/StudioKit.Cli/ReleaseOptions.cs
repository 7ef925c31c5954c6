using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Release;

namespace StudioKit.Cli;

/// <summary>The options by which a user decides what leaves the log of sensitive records.</summary>
internal sealed class ReleaseOptions
{
    private readonly Option<string[]> _release = new("--release")
    {
        Description = "Field of sensitive records that leaves as recorded, once for each: " + string.Join(", ", ReleaseWords.All)
            + ". For one session or subject alone: e.g. --release habitat=SESSION. Default: none.",
        HelpName = "field",
    };

    private readonly Option<bool> _leaveOut = new("--leave-out-sensitive")
    {
        Description = "Sensitive subjects stay behind, and the others of their sessions leave as recorded. Default: they leave coarsened, with all of their session.",
    };

    public void AddTo(Command command)
    {
        command.Options.Add(_release);
        command.Options.Add(_leaveOut);
    }

    /// <summary>Reads the choices; none where one is not understood, which is then printed.</summary>
    public ReleaseChoices? Read(ParseResult parsed, CommandHost host, LogSnapshot log)
    {
        var permissions = new List<FieldPermission>();
        foreach (var text in parsed.GetValue(_release) ?? [])
        {
            var read = ReleaseWords.Read(text);
            if (!read.IsSound || !IsKnown(read.Value[0].RecordId, log))
            {
                Refuse(host, text, read.Diagnostics);
                return null;
            }

            permissions.AddRange(read.Value);
        }

        return new ReleaseChoices { Released = permissions, LeavesSensitiveOut = parsed.GetValue(_leaveOut) };
    }

    private static bool IsKnown(string id, LogSnapshot log) =>
        id.Length == 0 || log.Sessions.Any(session => session.Id == id) || log.Subjects.Any(subject => subject.Id == id);

    private static void Refuse(CommandHost host, string text, IReadOnlyList<Field.FieldDiagnostic> diagnostics)
    {
        FieldFaults.Print(host, diagnostics);
        if (diagnostics.Count == 0)
        {
            host.Error.WriteLine($"studiokit: --release {text}: the log has no such session or subject; 'studiokit log list' shows them.");
        }
    }
}
