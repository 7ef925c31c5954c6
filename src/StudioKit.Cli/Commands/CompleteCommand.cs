using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Usage;
using StudioKit.Kits;
using StudioKit.Kits.Completing;
using StudioKit.Kits.Editing;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit complete</c>: what could stand at a place of a kit, for editors and whoever types.</summary>
internal sealed class CompleteCommand
{
    private const string Text =
        """
        Prints what could stand at a place of a kit, also while its YAML is broken there: keys that are allowed and not there yet, words, names, parts, units.

        One candidate a line, in three fields with a tab between them: what to insert, with line ends written as \n; what it is (key, word, name, part, unit,
        default or example); what it is for. With --json each also has the stretch of text that it takes the place of. A tab is one column; a byte-order mark
        and line ends are none.

        Example: studiokit complete kits/fen-edge.yaml --at 12:9
        Example: studiokit complete - --at 12:9 --beside kits/fen-edge.yaml --json < unsaved.yaml
        """;

    private readonly CommandHost _host;
    private readonly Argument<string> _kit = KitInput.Argument();
    private readonly Option<TextPlace> _at = QuantityOption.Required<TextPlace>("--at", "Line and column of the place, both from 1, e.g. 12:9.", TextPlace.TryRead);
    private readonly Option<ColumnUnit> _columns = ChoiceOption.Create(
        "--columns", "What columns are counted in, e.g. bytes: code-units (of UTF-16, as check counts), characters, or bytes (of UTF-8).", ColumnUnit.CodeUnits);
    private readonly Option<string?> _beside = new("--beside")
    {
        Description = "Look parts up in the folder 'parts' beside this file, e.g. kits/fen-edge.yaml; beside the kit itself where left out, or where the command runs if it comes from the standard input.",
        HelpName = "file",
    };

    private readonly Option<bool> _json = JsonOption.Create();

    private CompleteCommand(CommandHost host) => _host = host;

    public static Command Create(CommandHost host)
    {
        var complete = new CompleteCommand(host);
        var command = new Command("complete", Text) { complete._kit, complete._at, complete._columns, complete._beside, complete._json };
        command.SetAction(parsed => (int)complete.Run(parsed));
        return command;
    }

    private ExitCode Run(ParseResult parsed)
    {
        var path = parsed.GetRequiredValue(_kit);
        var decoded = InputFile.Read<DecodedKit>(path, path == KitInput.StandardInput ? _ => FromInput() : DecodedKit.Read);
        if (decoded.Text is not { } text)
        {
            _host.Report(decoded.Problem!);
            return ExitCode.BadInput;
        }

        var (at, places) = (parsed.GetRequiredValue(_at), new TextPlaces(text, parsed.GetValue(_columns)));
        if (places.Offset(at.Line, at.Column) is not { } offset)
        {
            _host.Report(UsageCodes.Refused, $"--at: {Outside(at, places)}");
            return ExitCode.BadInput;
        }

        var beside = parsed.GetValue(_beside) ?? (path == KitInput.StandardInput ? "" : path);
        var candidates = InputFile.Read(beside.Length > 0 ? beside : "the parts library", _ => KitCompletion.At(text, offset, PartsLibrary.BesideKit(beside)));
        Print(candidates, places, parsed.GetValue(_json));
        return ExitCode.Done;
    }

    private DecodedKit FromInput()
    {
        using var stream = _host.OpenInput();
        return DecodedKit.Read(stream, "standard input");
    }

    private static string Outside(TextPlace at, TextPlaces places) => at.Line > places.Lines
        ? FormattableString.Invariant($"line {at.Line} is past the end; the kit has {places.Lines} {(places.Lines == 1 ? "line" : "lines")}.")
        : at.Column > places.LastColumn(at.Line)
            ? FormattableString.Invariant($"column {at.Column} is past the end of line {at.Line}, whose last column is {places.LastColumn(at.Line)}; '--columns' says what columns are counted in.")
            : FormattableString.Invariant($"column {at.Column} of line {at.Line} is within a character; '--columns' says what columns are counted in.");

    private void Print(IReadOnlyList<KitCandidate> candidates, TextPlaces places, bool asJson)
    {
        if (asJson)
        {
            _host.Output.WriteLine(JsonReport.Document(json => json.List("candidates", candidates, candidate => Fill(json, candidate, places))));
            return;
        }

        if (candidates.Count == 0)
        {
            _host.Error.WriteLine("studiokit: nothing is known that could stand there.");
        }

        foreach (var candidate in candidates)
        {
            _host.Output.WriteLine($"{OnOneLine(candidate.Edit.NewText)}\t{MemberText.Of(candidate.Kind)}\t{candidate.Help.ReplaceLineEndings(" ")}".TrimEnd('\t'));
        }
    }

    private static void Fill(JsonReport json, KitCandidate candidate, TextPlaces places)
    {
        var (from, to) = (places.Of(candidate.Edit.Start), places.Of(candidate.Edit.Start + candidate.Edit.Length));
        json.Text("label", candidate.Label).Text("kind", MemberText.Of(candidate.Kind)).Text("help", candidate.Help).Text("insert", candidate.Edit.NewText)
            .Count("fromLine", from.Line).Count("fromColumn", from.Column).Count("toLine", to.Line).Count("toColumn", to.Column);
    }

    private static string OnOneLine(string text) => text
        .Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\r", "\\r", StringComparison.Ordinal).Replace("\n", "\\n", StringComparison.Ordinal).Replace("\t", "\\t", StringComparison.Ordinal);
}
