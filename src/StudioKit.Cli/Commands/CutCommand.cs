using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Usage;
using StudioKit.Cutting;
using StudioKit.Kits;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Cutting.Reports;
using StudioKit.Planning.Cutting.Tables;
using StudioKit.Wording;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit cut</c>: a cut plan of bars or sheets from tables of pieces and stock, without a kit file.</summary>
internal sealed class CutCommand
{
    private const string Text =
        """
        Plans which pieces are cut from which bars or sheets at least cost, and proves it where it can.

        Bars: --pieces has columns label,length,count and --stock length,price,count. Sheets: --sheet-pieces has columns
        label,width,height,count,turn and --sheets width,height,price,count. Lengths carry their unit. An empty count of stock
        means as many as needed; stock without a price is on hand. "no" under turn keeps the grain or film direction.

        Example: studiokit cut --pieces pieces.csv --stock stock.csv --kerf "3 mm" --json
        """;

    private readonly CommandHost _host;
    private readonly Option<string?> _pieces = new("--pieces") { Description = "Table of pieces to cut from bars, e.g. pieces.csv, with the columns label,length,count; left out where sheets are cut.", HelpName = "file" };
    private readonly Option<string?> _stock = new("--stock") { Description = "Table of bars, e.g. stock.csv, with the columns length,price,count; goes with --pieces, else left out.", HelpName = "file" };
    private readonly Option<string?> _sheetPieces = new("--sheet-pieces") { Description = "Table of pieces to cut from sheets, e.g. panels.csv, with the columns label,width,height,count,turn; left out where bars are cut.", HelpName = "file" };
    private readonly Option<string?> _sheets = new("--sheets") { Description = "Table of sheets, e.g. sheets.csv, with the columns width,height,price,count; goes with --sheet-pieces, else left out.", HelpName = "file" };
    private readonly Option<string?> _kerf = new("--kerf") { Description = "Width of one cut, e.g. \"3 mm\"; no width where left out.", HelpName = "length" };
    private readonly Option<string?> _trim = new("--trim") { Description = "Squared off one end of every bar, or two edges of every sheet, e.g. \"5 mm\"; nothing where left out.", HelpName = "length" };
    private readonly Option<Duration> _limit = QuantityOption.Optional(
        "--time-limit", "Longest time to look for a better plan or a proof, e.g. \"20 s\"; the best plan so far is then printed. As long as it takes where left out.",
        QuantityOption.Between<Duration>(QuantityText.TryDuration, time => time.Seconds, "0.1 s", "24 h"), Duration.Zero);

    private readonly Option<bool> _json = JsonOption.Create();
    private readonly Option<bool> _csv = new("--csv") { Description = "Print the plan as comma-separated text, one row a piece." };

    private CutCommand(CommandHost host) => _host = host;

    public static Command Create(CommandHost host)
    {
        var cut = new CutCommand(host);
        var command = new Command("cut", Text)
        {
            cut._pieces, cut._stock, cut._sheetPieces, cut._sheets, cut._kerf, cut._trim, cut._limit, cut._json, cut._csv,
        };
        command.SetAction((parsed, stop) => Task.FromResult((int)cut.RunLimited(parsed, stop)));
        return command;
    }

    private ExitCode RunLimited(ParseResult parsed, CancellationToken stop)
    {
        using var limited = CancellationTokenSource.CreateLinkedTokenSource(stop);
        if (parsed.GetValue(_limit) > Duration.Zero)
        {
            limited.CancelAfter(parsed.GetValue(_limit).ToTimeSpan());
        }

        return Run(parsed, limited.Token);
    }

    private ExitCode Run(ParseResult parsed, CancellationToken cancellationToken)
    {
        var kerf = ReadLength(parsed.GetValue(_kerf), "--kerf");
        var trim = ReadLength(parsed.GetValue(_trim), "--trim");
        if (kerf is null || trim is null)
        {
            return ExitCode.BadInput;
        }

        return (parsed.GetValue(_pieces), parsed.GetValue(_stock), parsed.GetValue(_sheetPieces), parsed.GetValue(_sheets)) switch
        {
            ({ } pieces, { } stock, null, null) => CutBars(parsed, pieces, stock, kerf.Value, trim.Value, cancellationToken),
            (null, null, { } pieces, { } sheets) => CutSheets(parsed, pieces, sheets, kerf.Value, trim.Value, cancellationToken),
            _ => BadUsage("name --pieces and --stock for bars, or --sheet-pieces and --sheets for sheets."),
        };
    }

    private ExitCode CutBars(ParseResult parsed, string pieces, string stock, Length kerf, Length trim, CancellationToken cancellationToken)
    {
        var wanted = CutTables.BarPieces(pieces, InputFile.Text(pieces, CutTables.MostBytes));
        var bars = CutTables.Bars(stock, InputFile.Text(stock, CutTables.MostBytes));
        if (!Sound(wanted) | !Sound(bars))
        {
            return ExitCode.BadInput;
        }

        var request = new BarCutRequest { Pieces = wanted.Rows, Stock = bars.Rows, Kerf = kerf, Trim = trim };
        var plan = new OptimalBarCutPlanner().Plan(request, CutProgressLine.For(_host), cancellationToken);
        Print(parsed, () => CutJson.Document(BarCutReport.From(request, plan)), () => CutPlanTables.Of(plan), () => CutPlanText.Of(plan));
        return Finish(plan.Uncut, plan.Proof, cancellationToken);
    }

    private ExitCode CutSheets(ParseResult parsed, string pieces, string sheets, Length kerf, Length trim, CancellationToken cancellationToken)
    {
        var wanted = CutTables.SheetPieces(pieces, InputFile.Text(pieces, CutTables.MostBytes));
        var stock = CutTables.Sheets(sheets, InputFile.Text(sheets, CutTables.MostBytes));
        if (!Sound(wanted) | !Sound(stock))
        {
            return ExitCode.BadInput;
        }

        var request = new SheetCutRequest { Pieces = wanted.Rows, Stock = stock.Rows, Kerf = kerf, Trim = trim };
        var plan = new OptimalSheetCutPlanner().Plan(request, CutProgressLine.For(_host), cancellationToken);
        Print(parsed, () => CutJson.Document(SheetCutReport.From(request, plan)), () => CutPlanTables.Of(plan), () => CutPlanText.Of(plan));
        return Finish(plan.Uncut, plan.Proof, cancellationToken);
    }

    private void Print(ParseResult parsed, Func<string> document, Func<string> table, Func<string> text) => _host.Output.Write(
        parsed.GetValue(_json) ? document() : parsed.GetValue(_csv) ? table() : text());

    private ExitCode Finish(IReadOnlyList<UncutPiece> uncut, CutProof proof, CancellationToken cancellationToken)
    {
        if (cancellationToken.IsCancellationRequested && !proof.ProvenOptimal)
        {
            _host.Error.WriteLine($"studiokit: {(_host.Stop.IsCancellationRequested ? "stopped" : "the time is up")}; the plan is the best found so far, and not proven to be the best there is.");
        }

        foreach (var piece in uncut)
        {
            _host.Error.WriteLine($"studiokit: {UncutText.Of(piece)}");
        }

        return _host.Stop.IsCancellationRequested && !proof.ProvenOptimal ? ExitCode.Stopped : uncut.Count == 0 ? ExitCode.Done : ExitCode.PlanFails;
    }

    private ExitCode BadUsage(string sentence)
    {
        _host.Report(UsageCodes.BadUsage, sentence);
        _host.Error.WriteLine("Try 'studiokit cut --help'.");
        return ExitCode.BadInput;
    }

    private Length? ReadLength(string? text, string option)
    {
        if (text is null)
        {
            return Length.Zero;
        }

        if (!QuantityText.TryLength(text, out var length, out var problem))
        {
            BadUsage($"{option}: {problem}");
            return null;
        }

        if (length.Millimeters is < 0 or > 1000)
        {
            BadUsage($"{option}: '{text}' must lie between 0 mm and 1 m.");
            return null;
        }

        return length;
    }

    private bool Sound<T>(CutTable<T> table)
    {
        foreach (var diagnostic in table.Diagnostics)
        {
            _host.Report(diagnostic);
        }

        return table.Sound;
    }
}
