using System.CommandLine;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit completion</c>: prints the few lines that teach a shell to complete commands and options.</summary>
internal static class CompletionCommand
{
    private const string Bash =
        """
        _studiokit_complete() {
            local IFS=$'\n'
            COMPREPLY=( $(studiokit "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null) )
            [ ${#COMPREPLY[@]} -gt 0 ] || COMPREPLY=( $(compgen -f -- "${COMP_WORDS[COMP_CWORD]}") )
        }
        complete -o filenames -F _studiokit_complete studiokit
        """;

    private const string Zsh =
        """
        _studiokit_complete() {
            local -a found
            found=( ${(f)"$(studiokit "[suggest:${CURSOR}]" "${BUFFER}" 2>/dev/null)"} )
            if (( ${#found} )); then compadd -- $found; else _files; fi
        }
        compdef _studiokit_complete studiokit
        """;

    private const string Fish =
        """
        complete -f -c studiokit -a '(set -l line (commandline -cp); studiokit "[suggest:"(string length -- $line)"]" "$line" 2>/dev/null)'
        complete -F -c studiokit -n '__fish_seen_subcommand_from check complete plan sheets light'
        """;

    private const string PowerShell =
        """
        Register-ArgumentCompleter -Native -CommandName studiokit -ScriptBlock {
            param($wordToComplete, $commandAst, $cursorPosition)
            studiokit "[suggest:$cursorPosition]" "$commandAst" 2>$null |
                ForEach-Object { [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_) }
        }
        """;

    private static readonly Dictionary<string, string> Scripts = new(StringComparer.Ordinal)
    {
        ["bash"] = Bash,
        ["zsh"] = Zsh,
        ["fish"] = Fish,
        ["powershell"] = PowerShell,
    };

    public static Command Create(CommandHost host)
    {
        var shell = new Argument<string>("shell") { Description = "Which shell, e.g. bash: bash, zsh, fish or powershell." };
        shell.AcceptOnlyFromAmong([.. Scripts.Keys]);
        var command = new Command(
            "completion",
            "Prints completion lines for a shell.\n\nExample: studiokit completion bash >> ~/.bashrc")
        {
            shell,
        };
        command.SetAction(parsed =>
        {
            host.Output.WriteLine(Scripts[parsed.GetRequiredValue(shell)]);
            return (int)ExitCode.Done;
        });
        return command;
    }
}
