using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Field;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Release;

namespace StudioKit.Cli;

/// <summary>The options by which a user decides what leaves the log of sensitive records.</summary>
internal sealed class ReleaseOptions
{
    private readonly Option<string[]> _release = new("--release")
    {
        Description = "Field of sensitive records that leaves as recorded, once for each: " + string.Join(", ", ReleaseWords.All)
            + ". For one session or subject alone: e.g. --release habitat=k7m. Default: none.",
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
    public ReleaseChoices? Read(ParseResult parsed, CommandHost host, LogIndex index)
    {
        var permissions = new List<FieldPermission>();
        foreach (var text in parsed.GetValue(_release) ?? [])
        {
            var read = ReleaseWords.Read(text);
            var record = read.IsSound && read.Value[0].RecordId.Length > 0 ? index.Find(read.Value[0].RecordId) : null;
            if (!read.IsSound || record is { IsSound: false })
            {
                FieldFaults.Print(host, [.. read.Diagnostics, .. record?.Diagnostics ?? []]);
                return null;
            }

            if (record?.Value is { Kind: not LogRecordKind.Session } && ReleaseWords.IsOfSession(text.Split('=')[0].Trim()))
            {
                FieldFaults.Print(host, [new FieldDiagnostic("FLD485", $"--release {text}", $"This is a field of the session, which all its subjects share; {record.Value} is none.", "Name the session.")]);
                return null;
            }

            permissions.AddRange(read.Value.Select(permission => permission with { RecordId = record?.Value?.Id ?? "" }));
        }

        return new ReleaseChoices { Released = permissions, LeavesSensitiveOut = parsed.GetValue(_leaveOut) };
    }
}
