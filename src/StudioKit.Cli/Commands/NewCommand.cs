using System.CommandLine;
using System.Text;
using StudioKit.Cli.Files;
using StudioKit.Kits;
using StudioKit.Kits.Cards;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit new</c>: writes a commented starter kit or card template.</summary>
internal static class NewCommand
{
    private const string Text =
        """
        Writes a starter kit whose comments say what every line is for. Change it to what you own, then run 'studiokit check' on it.
        With --template it writes one of the card templates instead, to be changed and given to 'studiokit sheets --template'.

        Example: studiokit new my-kit.yaml
        Example: studiokit new --template A6 my-card.yaml
        """;

    public static Command Create(CommandHost host)
    {
        var file = new Argument<string>("file") { Description = "The file to write, e.g. my-kit.yaml." };
        var force = ForceOption.Create();
        var template = new Option<string>("--template") { Description = $"Card template to write, e.g. A6, of {string.Join(", ", CardTemplates.Names)}; a kit is written where left out.", HelpName = "size" };
        template.AcceptOnlyFromAmong([.. CardTemplates.Names]);
        var command = new Command("new", Text) { file, template, force };
        command.SetAction(parsed =>
        {
            var text = parsed.GetValue(template) is { } name ? CardTemplates.Text(name) : StarterKit.Text;
            var path = parsed.GetRequiredValue(file);
            host.Output.WriteLine(OutputFiles.Write(host, parsed.GetValue(force), [], [(path, Encoding.UTF8.GetBytes(text))])[0]);
            return (int)ExitCode.Done;
        });
        return command;
    }
}
