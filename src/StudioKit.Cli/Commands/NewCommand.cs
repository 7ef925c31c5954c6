using System.CommandLine;
using System.Text;
using StudioKit.Cli.Files;
using StudioKit.Kits;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit new</c>: writes a commented starter kit.</summary>
internal static class NewCommand
{
    private const string Text =
        """
        Writes a starter kit whose comments say what every line is for. Change it to what you own, then run 'studiokit check' on it.

        Example: studiokit new my-kit.yaml
        """;

    public static Command Create(CommandHost host)
    {
        var file = new Argument<string>("file") { Description = "The file to write." };
        var force = ForceOption.Create();
        var command = new Command("new", Text) { file, force };
        command.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(file);
            var written = WrittenFiles.In(WrittenFiles.FolderOf(path), parsed.GetValue(force))
                .Write([(Path.GetFileName(path), Encoding.UTF8.GetBytes(StarterKit.Text))]);
            host.Output.WriteLine(written[0]);
            return (int)ExitCode.Done;
        });
        return command;
    }
}
