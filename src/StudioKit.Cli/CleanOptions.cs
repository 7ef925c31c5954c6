using System.CommandLine;
using StudioKit.Cli.Records;
using StudioKit.Field.Log.Release;
using StudioKit.FieldFiles.Metadata;

namespace StudioKit.Cli;

/// <summary>The options by which copies of pictures are freed of what tells where they were taken and by whom.</summary>
internal sealed class CleanOptions
{
    private readonly Option<bool> _clean = new("--clean")
    {
        Description = "Take coordinates, serial numbers, names, makers' blocks, small pictures, captions, dates and all other text out of the copies. Default: they are kept.",
    };

    private readonly Option<string?> _log = new("--log")
    {
        Description = "Field log that tells which pictures are sensitive, by their names before the ending, e.g. field.log: their copies are cleaned. Default: none is asked.",
        HelpName = "file",
    };

    private readonly HashSet<string> _telling = new(StringComparer.OrdinalIgnoreCase);

    public void AddTo(Command command)
    {
        command.Options.Add(_clean);
        command.Options.Add(_log);
    }

    /// <summary>Which pictures are to be cleaned.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="host">Where faults of the log go.</param>
    /// <param name="code">What is wrong with the log.</param>
    public Func<string, bool> Which(ParseResult parsed, CommandHost host, out ExitCode code)
    {
        var sensitive = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        code = parsed.GetValue(_log) is not { } path ? ExitCode.Done : OpenLog.ToRead(host, path, log =>
        {
            var release = LogRelease.Of(log.Read());

            // A raw file and the JPEG taken with it are one picture.
            sensitive.UnionWith(release.SensitivePictures.Select(Stem));
            _telling.UnionWith(release.TellingNames.Select(Stem));
            return ExitCode.Done;
        });
        return photo => parsed.GetValue(_clean) || sensitive.Contains(Stem(photo));
    }

    /// <summary>Says what a copy tells: in its file, where it was not cleaned, and by its name.</summary>
    public void WarnOfCopy(CommandHost host, string photo, bool isClean)
    {
        if (!isClean)
        {
            Warn(host, photo, "its copy carries them, too; --clean takes them out.");
        }

        if (_telling.Contains(Stem(photo)))
        {
            host.Error.WriteLine($"{photo}: its name holds a word of its sensitive place, and the copy keeps the name; 'studiokit log export --copies' gives neutral ones.");
        }
    }

    private static string Stem(string photo) => Path.GetFileNameWithoutExtension(photo);

    /// <summary>Says what an original tells that its copy tells, too.</summary>
    public static void Warn(CommandHost host, string photo, string advice)
    {
        var tells = CleanPicture.Look(photo);
        var words = new[]
        {
            tells.HasFlag(TellingMetadata.Position) ? "coordinates" : "", tells.HasFlag(TellingMetadata.SerialNumber) ? "serial numbers or an owner's name" : "",
        }.Where(word => word.Length > 0).ToList();
        if (words.Count > 0)
        {
            host.Error.WriteLine($"{photo}: carries {string.Join(" and ", words)}; {advice}");
        }
    }
}
